import type { Point } from '../../diagram/canvas';
import { layOutShot } from '../../diagram/table-lines';
import type { ChooseModel } from '../../state/choose/choose-model';
import { Ball, Line } from '../drawing-parts';
import type { Board } from './use-board';

interface Props {
  readonly choose: ChooseModel;
  readonly board: Board;
}

/** Straight line, ghost ball and target line, and what is in the way; greyed while there is no shot. */
export function ShotOverlay({ choose, board }: Props) {
  const now = choose.shot.value;
  const shot = now?.ok ? now : choose.lastShot.value;
  const { balls, goal } = choose.open.value;
  const { ball, pocket } = goal;
  if (!shot || now === null || ball === null || pocket === null) return null;
  const way = choose.chosen.value;
  const aimRad = way && !choose.comparison.value.isStale ? way.option.stroke.aimRad : null;
  const lines = layOutShot(
    { shot, balls, ball, pocket, aimRad },
    choose.shape.value,
    board.map.value,
  );
  if (!lines) return null;
  const ghost = { cx: lines.ghost.x, cy: lines.ghost.y, r: board.size.value.radiusPx };
  return (
    <g class={now.ok ? 'shot-overlay' : 'shot-overlay is-old'}>
      <Line segment={lines.target} class="target-line" />
      <Line segment={lines.straight} class="straight-line" />
      <Line segment={lines.aim} class="board-aim" />
      <Ball ball={ghost} class="board-ghost" />
      {now.ok && lines.inTheWay.map((at) => <InTheWayMark key={`${at.x} ${at.y}`} at={at} />)}
    </g>
  );
}

/** A cross and a word, so that it is not told by a colour. */
function InTheWayMark({ at: { x, y } }: { at: Point }) {
  return (
    <g class="in-the-way" transform={`translate(${x} ${y})`}>
      <path d="M-11 -11L11 11M-11 11L11 -11" />
      <text y={-15} text-anchor="middle">
        in the way
      </text>
    </g>
  );
}
