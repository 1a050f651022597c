import { useEffect, useRef } from 'preact/hooks';
import type { AppModels } from '../app-models';
import { ChanceMapDrawing } from './ChanceMapDrawing';
import { WayFan, WayHead } from './ChosenWay';
import { WayList } from './WayList';
import './Ways.css';

/** What stands beside the table: the comparison, or the way that was picked. */
export function WaysSide({ app }: { app: AppModels }) {
  const way = app.choose.chosen.value;
  return way ? <WayHead app={app} way={way} /> : <Compare app={app} />;
}

/** Starts and stops the comparison, and says how far it has come. */
function Compare({ app: { choose } }: { app: AppModels }) {
  const { state, progress, isStale, problem, ways } = choose.comparison.value;
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
          class="button button-primary"
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
        {problem ?? compareWords(state, ways.length, isStale)}
      </p>
    </div>
  );
}

function compareWords(state: string, ways: number, isStale: boolean): string {
  if (isStale) return 'Position, kit or player have changed: compare again.';
  if (state === 'none') return 'Thousands of strokes, each by how often it goes.';
  if (state === 'running') return 'Comparing…';
  if (ways === 0) return 'No way of playing it goes.';
  return state === 'stopped' ? 'Stopped early: not all ways are here.' : '';
}

/** Whoever comes back from a way to the list finds the focus on its row. */
function useFocusOnRow(place: number | null) {
  const before = useRef(place);
  useEffect(() => {
    const left = before.current;
    before.current = place;
    if (place !== null || left === null || document.activeElement !== document.body) return;
    document.querySelector<HTMLElement>(`[data-way="${left}"]`)?.focus();
  }, [place]);
}

/** The ways to play the shot, or the one that was picked. */
export function WaysTools({ app }: { app: AppModels }) {
  const { choose } = app;
  useFocusOnRow(choose.chosen.value?.option.place ?? null);
  if (choose.chosen.value) return <WayFan app={app} way={choose.chosen.value} />;
  const { map, ways, isStale } = choose.comparison.value;
  return (
    <div class={isStale ? 'ways is-stale' : 'ways'}>
      <WayList app={app} ways={ways} />
      {map && <ChanceMapDrawing app={app} map={map} />}
    </div>
  );
}
