import type { Models } from '../app-models';
import type { ChooseMode } from './choose-mode';

interface Props {
  readonly app: Models<'choose' | 'router'>;
  readonly mode: ChooseMode;
}

/** While there is no shot: leads to where the balls are laid, or the shot is chosen. */
export function WayOut({ app: { choose, router }, mode }: Props) {
  const { balls } = choose.open.value;
  const hasCueBall = balls.some(({ name }) => name === 'cue');
  if (!hasCueBall || balls.length < 2) {
    return (
      <button type="button" class="button button-primary" onClick={() => router.close()}>
        Put the balls down
      </button>
    );
  }
  if (mode === 'play' || choose.shot.value?.ok) return null;
  return (
    <button type="button" class="button button-primary" onClick={() => router.open('play')}>
      Choose ball and pocket
    </button>
  );
}
