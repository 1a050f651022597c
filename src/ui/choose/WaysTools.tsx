import { useSignal } from '@preact/signals';
import { bestCell, coarseChances } from '../../diagram/table-chances';
import type { Comparison } from '../../state/choose/choose-model';
import type { Models } from '../app-models';
import { AskOnce } from '../player/AskOnce';
import { ChanceMapDrawing, type PickedCell } from './ChanceMapDrawing';
import { WayFan, WayHead } from './ChosenWay';
import { useListPlace } from './use-list-place';
import { WayList } from './WayList';
import './Ways.css';

/** What stands beside the table: the comparison, or the way that was picked. */
export function WaysSide({ app }: { app: Models<'shot' | 'choose' | 'player' | 'router'> }) {
  const way = app.choose.chosen.value;
  return way ? <WayHead app={app} way={way} /> : <Compare app={app} />;
}

/** Starts and stops the comparison, and says how far it has come. */
function Compare({ app: { choose } }: { app: Models<'choose'> }) {
  const now = choose.comparison.value;
  const { state, progress, problem } = now;
  const isRunning = state === 'running';
  const canCompare = choose.shot.value?.ok === true;
  return (
    <div class="compare">
      {isRunning ? (
        <button type="button" class="button button-primary" onClick={() => choose.stop()}>
          Stop
        </button>
      ) : (
        <button
          type="button"
          class={isWorthComparing(now) ? 'button button-primary' : 'button'}
          disabled={!canCompare}
          onClick={() => choose.compare()}
        >
          {state === 'none' ? 'Compare all ways' : 'Compare again'}
        </button>
      )}
      {isRunning && (
        <progress aria-label="Comparison" value={progress} max={1}>
          {Math.round(progress * 100)} %
        </progress>
      )}
      <p class="compare-note" role="status">
        {problem ?? compareWords(now)}
      </p>
    </div>
  );
}

/** Comparing again what is done and has not changed since tells nothing new. */
function isWorthComparing({ state, isStale }: Comparison): boolean {
  return state !== 'done' || isStale;
}

function compareWords({ state, ways, isStale }: Comparison): string {
  if (isStale) return 'Position, kit or player have changed: compare again.';
  if (state === 'none') return 'Thousands of strokes, each by how often it goes.';
  if (state === 'running') return 'Comparing…';
  if (state === 'stopped') return 'Stopped early: not all ways are here.';
  return ways.length === 0
    ? 'No direct way of playing it goes; banks, kicks and combinations were not looked at. Try another pocket or another ball under Play.'
    : '';
}

/** The ways to play the shot, or the one that was picked. */
export function WaysTools({
  app,
}: {
  app: Models<'shot' | 'choose' | 'player' | 'kit' | 'desk' | 'router'>;
}) {
  const { choose } = app;
  const way = choose.chosen.value;
  const picked = useSignal<PickedCell | null>(null);
  const onLook = useListPlace(way !== null);
  if (way) return <WayFan app={app} way={way} />;
  const { map, ways, isStale } = choose.comparison.value;
  const grid = map && coarseChances(map);
  return (
    <div class={isStale ? 'ways is-stale' : 'ways'}>
      {ways.length > 0 && <AskOnce app={app} />}
      <WayList app={app} ways={ways} onLook={onLook} />
      {grid && bestCell(grid) && (
        <ChanceMapDrawing app={app} grid={grid} picked={picked} onLook={onLook} />
      )}
    </div>
  );
}
