import type { ReadonlySignal } from '@preact/signals';
import type { RefObject } from 'preact';
import { useEffect, useMemo, useRef } from 'preact/hooks';
import type { ChooseModel } from '../../state/choose/choose-model';
import { type BoardTouch, createBoardTouch } from './board-touch';
import type { ChooseMode } from './choose-mode';
import type { Board } from './use-board';

interface Props {
  readonly choose: ChooseModel;
  readonly board: Board;
  /** As large as the drawing, and where it is. */
  readonly holder: RefObject<HTMLDivElement | null>;
  readonly mode: ChooseMode;
  readonly isSnapping: ReadonlySignal<boolean>;
}

/** A finger on the table, or on its way there. */
export function useBoardTouch({ choose, board, holder, mode, isSnapping }: Props): BoardTouch {
  const now = useRef(mode);
  now.current = mode;
  const { canvas, map, rails, size } = board;
  const touch = useMemo(
    () =>
      createBoardTouch({
        choose,
        board: { canvas, map, rails, size },
        drawing: () => holder.current,
        mode: () => now.current,
        isSnapping: () => isSnapping.peek(),
      }),
    [choose, canvas, map, rails, size, holder, isSnapping],
  );
  useEffect(() => () => touch.leave(), [touch]);
  return touch;
}
