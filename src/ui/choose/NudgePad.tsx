import { useComputed } from '@preact/signals';
import type { ChooseModel } from '../../state/choose/choose-model';
import { HoldButton } from '../controls/HoldButton';
import type { ChooseMode } from './choose-mode';
import { NUDGE_M, type NudgeWay, nudgeOnTable } from './table-nudge';
import type { Board } from './use-board';

interface Props {
  readonly choose: ChooseModel;
  readonly board: Board;
  readonly mode: ChooseMode;
  /** What is moved: "ball", "zone". */
  readonly what: string;
}

const WAYS: readonly (readonly [string, string, NudgeWay])[] = [
  ['↑', 'up', { right: 0, up: 1 }],
  ['↓', 'down', { right: 0, up: -1 }],
  ['←', 'left', { right: -1, up: 0 }],
  ['→', 'right', { right: 1, up: 0 }],
];

/** Four buttons that move what is selected as seen on the screen, and go on while held. */
export function NudgePad({ choose, board, mode, what }: Props) {
  const isDisabled = useComputed(() => !hasSomethingToMove(choose, mode)).value;
  return (
    <div class="nudge-pad">
      {WAYS.map(([arrow, word, way]) => (
        <HoldButton
          key={word}
          model={choose}
          label={`Move ${what} ${word}`}
          isDisabled={isDisabled}
          step={(coarse) => {
            const stepM = coarse ? NUDGE_M.held : NUDGE_M.press;
            nudgeOnTable(choose, mode, board.map.peek().isTurned, way, stepM);
          }}
        >
          {arrow}
        </HoldButton>
      ))}
    </div>
  );
}

function hasSomethingToMove({ open, selected, ballAt }: ChooseModel, mode: ChooseMode): boolean {
  if (mode === 'zone') return open.value.zone !== null;
  return selected.value !== null && ballAt(selected.value) !== null;
}
