import { stepOnTable } from '../../diagram/table-map';
import type { ChooseModel } from '../../state/choose/choose-model';
import type { ChooseMode } from './choose-mode';
import { movedZone } from './zone-size';

/** Which way something is nudged, as seen on the screen. */
export interface NudgeWay {
  readonly right: -1 | 0 | 1;
  readonly up: -1 | 0 | 1;
}

/** How far one nudge goes, m: a button's, one held for a while, an arrow key's, with Shift. */
export const NUDGE_M = { press: 0.005, held: 0.02, key: 0.01, fineKey: 0.001 } as const;

/** Moves the ball selected, or the zone where that is being marked; false where there is neither. */
export function nudgeOnTable(
  choose: ChooseModel,
  mode: ChooseMode,
  isTurned: boolean,
  { right, up }: NudgeWay,
  stepM: number,
): boolean {
  const step = stepOnTable(isTurned, right * stepM, up * stepM);
  if (mode === 'zone') {
    const { zone } = choose.open.peek();
    if (zone) choose.markZone(movedZone(zone, step, choose.shape.peek()));
    return zone !== null;
  }
  const selected = choose.selected.peek();
  if (mode !== 'balls' || selected === null || !choose.ballAt(selected)) return false;
  choose.nudge(selected, step.rightM, step.upM);
  return true;
}
