import { useComputed } from '@preact/signals';
import type { RefObject } from 'preact';
import { spreadBalls } from '../../diagram/spread-balls';
import { endWords } from '../../diagram/table-map';
import type { BallName as Name } from '../../engine/lie/position';
import type { PocketName } from '../../engine/table/pocket-shape';
import type { ChooseModel } from '../../state/choose/choose-model';
import type { Models } from '../app-models';
import { TableRails } from '../TableRails';
import { canvasAttributes } from '../use-canvas';
import { useSettled } from '../use-settled';
import { isAllShown } from './all-ways/is-all-shown';
import { BallDisc, BallFace } from './BallMark';
import type { BoardTouch } from './board-touch';
import { boardWords } from './board-words';
import type { ChooseMode } from './choose-mode';
import { OverTable } from './OverTable';
import { pocketsTold } from './pockets-told';
import type { Board } from './use-board';
import './TableBoard.css';

interface Props {
  readonly app: Models<'choose' | 'player' | 'desk' | 'router'>;
  readonly board: Board;
  readonly holder: RefObject<HTMLDivElement | null>;
  readonly mode: ChooseMode;
  readonly touch: BoardTouch;
}

/** The table from above, to look at and to touch. */
export function TableBoard({ app, holder, board, mode, touch }: Props) {
  const { choose, desk } = app;
  const { preferences } = desk;
  const { onPointerDown, onPointerMove, onPointerUp, onPointerCancel } = touch;
  const words = useSettled(
    useComputed(() => {
      const { distanceUnit } = preferences.value;
      return boardWords(choose, distanceUnit, pocketsTold(app), isAllShown(app));
    }),
  );
  return (
    <div class="table-board" ref={holder}>
      <svg
        role="img"
        aria-label={words.value}
        {...canvasAttributes(board.canvas.value)}
        {...{ onPointerDown, onPointerMove, onPointerUp, onPointerCancel }}
      >
        <Bed choose={choose} board={board} mode={mode} />
        <OverTable app={app} board={board} />
        <Balls choose={choose} board={board} />
      </svg>
    </div>
  );
}

/** In the order of their names, so that none jumps as it is moved; no disc lies over a number. */
function Balls({ choose, board }: { choose: ChooseModel; board: Board }) {
  const names = useComputed(() =>
    choose.open.value.balls
      .map(({ name }) => name)
      .sort((a, b) => order(a) - order(b))
      .join(' '),
  );
  const shown = names.value
    .split(' ')
    .filter((name) => name !== '')
    .map((name): Name => (name === 'cue' ? name : Number(name)));
  const spread = useComputed(() =>
    spreadBalls(
      choose.open.value.balls,
      choose.frozenPairs.value,
      board.size.value,
      board.map.value,
    ),
  );
  const bars = useComputed(() =>
    spread.value.bars.map(({ from, to }) => `M${from.x} ${from.y}L${to.x} ${to.y}`).join(''),
  );
  const drawn = { spread, radiusPx: board.size.value.radiusPx };
  return (
    <>
      {shown.map((name) => (
        <BallDisc key={name} choose={choose} name={name} {...drawn} />
      ))}
      {bars.value !== '' && <path class="frozen-bar" d={bars} />}
      {shown.map((name) => (
        <BallFace key={name} name={name} {...drawn} />
      ))}
    </>
  );
}

function order(name: Name): number {
  return name === 'cue' ? 0 : name;
}

/** How far outside the hole the ring runs that marks the pocket played into, px. */
const RING_PX = 3.5;

interface BedProps {
  readonly choose: ChooseModel;
  readonly board: Board;
  readonly mode: ChooseMode;
}

function Bed({ choose, board, mode }: BedProps) {
  const { frame } = board.map.value;
  const { bedPath, noses, diamonds, pockets } = board.rails.value;
  const into = useComputed(() => choose.open.value.goal.pocket).value;
  const holeClass = (name: PocketName) => {
    const isClosed = mode === 'play' && choose.closed.value.has(name);
    return `board-hole${name === into ? ' is-chosen' : ''}${isClosed ? ' is-closed' : ''}`;
  };
  return (
    <>
      <TableRails frame={frame} diamonds={diamonds} />
      <path class="board-bed" d={bedPath} />
      {pockets.map(({ name, hole }) => (
        <circle key={name} class={holeClass(name)} {...hole} />
      ))}
      {pockets.map(
        ({ name, hole }) =>
          name === into && <circle key={name} class="hole-ring" {...hole} r={hole.r + RING_PX} />,
      )}
      {noses.map((nose) => (
        <path key={nose} class="board-nose" d={nose} />
      ))}
      <EndNotes board={board} />
    </>
  );
}

/** Names the ends; says that balls are drawn larger than true, where there is room to say so. */
function EndNotes({ board }: { board: Board }) {
  const { enlarged } = board.size.value;
  const map = board.map.value;
  const drawn = enlarged < 1.05 ? '' : `balls drawn ${enlarged.toFixed(1)} ×`;
  const [left, right] = endWords(map, board.canvas.value.textPx, drawn);
  const { endLabel, scaleLabel } = map;
  return (
    <>
      <text class="board-note" x={endLabel.x} y={endLabel.y}>
        {left}
      </text>
      {right !== '' && (
        <text class="board-note" x={scaleLabel.x} y={scaleLabel.y} text-anchor="end">
          {right}
        </text>
      )}
    </>
  );
}
