import type { Comparison } from '../../state/choose/choose-model';
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
          {onwardWords(choose.comparison.value)}
        </button>
      </div>
    ) : (
      <div class="sheet-foot">
        <button type="button" class="button button-primary" onClick={() => router.open('ways')}>
          See all ways to play it
        </button>
      </div>
    );
  }
  return null;
}

/** Whoever goes on finds the comparison begun, or done. */
function onwardWords({ state, ways, isStale }: Comparison): string {
  if (state === 'running') return 'See the ways: comparing…';
  if (state !== 'done' || isStale) return 'See the ways to play it';
  if (ways.length === 0) return 'See why no way goes';
  return ways.length === 1
    ? 'See the one way to play it'
    : `See the ${ways.length} ways to play it`;
}
