import { useSignal } from '@preact/signals';
import { bestCell, coarseChances } from '../../diagram/table-chances';
import type { RankedWay } from '../../engine/plan/ranked-way';
import type { Comparison } from '../../state/choose/choose-model';
import type { Models } from '../app-models';
import { tellingOf } from '../chance-telling';
import { AskOnce } from '../player/AskOnce';
import { forWords } from '../player/player-words';
import { AllWaysTools } from './all-ways/AllWaysTools';
import { KindChips } from './all-ways/KindChips';
import { ChanceMapDrawing, type PickedCell } from './ChanceMapDrawing';
import { WayFan, WayHead } from './ChosenWay';
import { orderWords } from './list-words';
import type { Board } from './use-board';
import { useListPlace } from './use-list-place';
import { WayList } from './WayList';
import './Ways.css';

/** How far the comparison has come, which begins by itself, and how the ways are ordered. */
function Comparing({ app }: { app: Models<'choose' | 'player' | 'router'> }) {
  const { choose } = app;
  const now = choose.comparison.value;
  const { state, progress, problem, isStale } = now;
  const [first] = now.ways;
  const isShot = choose.shot.value?.ok === true;
  // The ways themselves say it to whoever sees them.
  const isSeen = first === undefined || problem !== null || isStale || state === 'stopped';
  return (
    <div class="compare">
      {first && <WayOrder app={app} first={first} />}
      <p class={isSeen ? 'compare-note' : 'compare-note visually-hidden'} role="status">
        {problem ?? (isShot ? compareWords(now) : '')}
      </p>
      {state === 'running' && (
        <>
          <button type="button" class="button compare-do" onClick={() => choose.stop()}>
            Stop
          </button>
          <progress aria-label="Comparison" value={progress} max={1}>
            {Math.round(progress * 100)} %
          </progress>
        </>
      )}
      {first && state === 'done' && <AskOnce app={app} panel="ways/question" />}
      {isShot && (state === 'stopped' || state === 'failed') && (
        <button type="button" class="button compare-do" onClick={() => choose.compare()}>
          Compare again
        </button>
      )}
    </div>
  );
}

function WayOrder({ app, first }: { app: Models<'choose' | 'player'>; first: RankedWay }) {
  const whom = forWords(app.player.inPlay.value);
  return <h2 id="way-order">{orderWords(first.goodPosition !== null, tellingOf(app), whom)}</h2>;
}

function compareWords({ state, ways, isStale }: Comparison): string {
  if (isStale) return 'Something has changed: comparing anew…';
  if (state === 'stopped') return 'Stopped early: not all ways are here.';
  if (state !== 'done') return 'Comparing thousands of strokes…';
  return ways.length === 0
    ? 'No direct way of playing it goes: look at All, for banks, kicks, combinations and caroms.'
    : `${ways.length} ways to play it.`;
}

interface Props {
  readonly app: Models<'shot' | 'choose' | 'player' | 'kit' | 'desk' | 'router' | 'cards'>;
  readonly board: Board;
}

/** Ways of every kind, or what one straight shot can be played with. */
export function WaysTools({ app, board }: Props) {
  return app.choose.all.isDirect.value ? (
    <DirectWays app={app} />
  ) : (
    <AllWaysTools app={app} board={board} />
  );
}

/** The ways to play the shot, or the one that was picked. */
function DirectWays({ app }: Pick<Props, 'app'>) {
  const { choose } = app;
  const way = choose.chosen.value;
  const picked = useSignal<PickedCell | null>(null);
  const onLook = useListPlace(way !== null);
  if (way) {
    return (
      <>
        <WayHead app={app} way={way} />
        <WayFan app={app} way={way} />
      </>
    );
  }
  const { map, ways, isStale } = choose.comparison.value;
  const grid = map && coarseChances(map);
  return (
    <div class={isStale ? 'ways is-stale' : 'ways'}>
      <KindChips choose={choose} />
      <Comparing app={app} />
      <WayList app={app} ways={ways} onLook={onLook} />
      {grid && bestCell(grid) && (
        <ChanceMapDrawing app={app} grid={grid} picked={picked} onLook={onLook} />
      )}
    </div>
  );
}
