import type { ChooseModel } from '../../state/choose/choose-model';
import type { ChooseMode } from './choose-mode';
import { NUDGE_M, type NudgeWay, nudgeOnTable } from './table-nudge';

type Key = Pick<KeyboardEvent, 'key' | 'shiftKey' | 'ctrlKey' | 'metaKey' | 'altKey'>;

const ARROWS: Readonly<Record<string, NudgeWay>> = {
  ArrowLeft: { right: -1, up: 0 },
  ArrowRight: { right: 1, up: 0 },
  ArrowUp: { right: 0, up: 1 },
  ArrowDown: { right: 0, up: -1 },
};

/** Arrows nudge, with Shift finely; Delete takes off; Ctrl+Z and Ctrl+Y undo and redo. */
export function takesKey(
  event: Key,
  choose: ChooseModel,
  mode: ChooseMode,
  isTurned: boolean,
): boolean {
  if (event.ctrlKey || event.metaKey) return takesHistoryKey(event, choose);
  if (event.altKey) return false;
  const arrow = ARROWS[event.key];
  if (arrow) {
    const stepM = event.shiftKey ? NUDGE_M.fineKey : NUDGE_M.key;
    return nudgeOnTable(choose, mode, isTurned, arrow, stepM);
  }
  const selected = choose.selected.peek();
  if (event.key !== 'Delete' || mode !== 'balls' || selected === null) return false;
  choose.takeOff(selected);
  return true;
}

function takesHistoryKey({ key, shiftKey }: Key, choose: ChooseModel): boolean {
  const letter = key.toLowerCase();
  if (letter === 'y' || (letter === 'z' && shiftKey)) choose.redo();
  else if (letter === 'z') choose.undo();
  else return false;
  return true;
}
