import type { ReadonlySignal } from '@preact/signals';
import type { Label, Point } from '../../diagram/canvas';
import type { ShotLines } from '../../diagram/table-lines';
import { IN_THE_WAY } from '../../diagram/table-words';
import type { ChooseModel } from '../../state/choose/choose-model';
import { Ball, Line } from '../drawing-parts';
import type { Board } from './use-board';
import { Word } from './Word';

interface Props {
  readonly choose: ChooseModel;
  readonly board: Board;
  /** Null where there is nothing to draw. */
  readonly lines: ReadonlySignal<ShotLines | null>;
  /** Where each of what is in the way is named. */
  readonly words: readonly (Label | null)[];
}

/** Straight line, ghost ball and target line, and what is in the way; greyed while there is no shot. */
export function ShotOverlay({ choose, board, words, ...drawn }: Props) {
  const lines = drawn.lines.value;
  if (lines === null) return null;
  const isShot = choose.shot.value?.ok === true;
  const ghost = { cx: lines.ghost.x, cy: lines.ghost.y, r: board.size.value.radiusPx };
  return (
    <g class={isShot ? 'shot-overlay' : 'shot-overlay is-old'}>
      <Line segment={lines.target} class="target-line" />
      <Line segment={lines.straight} class="straight-line" />
      <Line segment={lines.aim} class="board-aim" />
      <Ball ball={ghost} class="board-ghost" />
      {isShot &&
        lines.inTheWay.map((at, index) => (
          <InTheWayMark key={`${at.x} ${at.y}`} at={at} label={words[index] ?? null} />
        ))}
    </g>
  );
}

/** A cross and a word, so that it is not told by a colour. */
function InTheWayMark({ at: { x, y }, label }: { at: Point; label: Label | null }) {
  return (
    <g class="in-the-way">
      <path d={`M${x - 11} ${y - 11}l22 22m-22 0l22 -22`} />
      <Word label={label}>{IN_THE_WAY}</Word>
    </g>
  );
}
