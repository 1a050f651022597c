import { lookAtCushion } from './approach-cushion';
import type { Field } from './field';
import { cushionIndex, foresee, foreseeOwn } from './foresee';
import { type Mover, setOff, stateOf } from './mover';
import { offCushion } from './off-cushion';
import { moved } from './set-apart';
import { isTouch, SLOW_MPS } from './slow-touch';

/** Plays the meeting of a ball and a cushion. */
export function answerCushion(field: Field, mover: Mover, index: number, timeS: number): void {
  const { approach, nearest } = field.scratch;
  const cushion = field.cushions[index];
  if (cushion === undefined) return;
  lookAtCushion(field, mover, cushion, timeS);
  if (!isTouch(approach)) {
    foreseeOwn(field, mover, timeS);
    return;
  }
  const { part } = nearest;
  const sunkM = Math.max(0, -approach.gapM);
  const ball = moved(stateOf(mover, timeS, field.kit), nearest, -sunkM);
  if (approach.closing > SLOW_MPS) {
    const { name } = cushion;
    const { xM, yM } = ball;
    const met = { kind: 'hits-cushion', timeS, ball: mover.number, xM, yM } as const;
    field.events.push({ ...met, cushion: name, part });
  }
  field.cushionMetS[cushionIndex(field, mover, index)] = timeS;
  setOff(mover, offCushion(ball, nearest, field.kit), timeS, field.kit);
  foresee(field, mover, timeS);
}
