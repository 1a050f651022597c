import type { Models } from '../app-models';
import type { ChooseMode } from './choose-mode';

interface Props {
  readonly app: Models<'choose' | 'router'>;
  readonly mode: ChooseMode;
}

/** Leads on: to where the balls are laid, to where the shot is chosen, to the ways to play it. */
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
  const isShot = choose.shot.value?.ok === true;
  if (mode === 'play') {
    return isShot ? (
      <div class="sheet-foot">
        <button type="button" class="button button-primary" onClick={() => router.open('ways')}>
          See the ways to play it
        </button>
      </div>
    ) : null;
  }
  if (isShot) return null;
  return (
    <button type="button" class="button button-primary" onClick={() => router.open('play')}>
      Choose ball and pocket
    </button>
  );
}
