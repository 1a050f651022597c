import { afterMeeting, closingSpeed, lineOfCentres } from '../impacts/two-moving-balls';
import { lookAtPair } from './approach-pair';
import type { Field } from './field';
import { foresee, foreseeMeeting, pairIndex } from './foresee';
import { type Mover, setOff, stateOf } from './mover';
import { setApart } from './set-apart';
import { isTouch, SLOW_MPS } from './slow-touch';

/** Plays the meeting of two balls, the lower number first. */
export function answerMeeting(field: Field, one: Mover, other: Mover, timeS: number): void {
  lookAtPair(field, one, other, timeS);
  if (!isTouch(field.scratch.approach)) {
    foreseeMeeting(field, one, other, timeS);
    return;
  }
  const found = [stateOf(one, timeS, field.kit), stateOf(other, timeS, field.kit)] as const;
  const line = lineOfCentres(...found);
  const [a, b] = setApart(...found, line, 2 * field.kit.ballRadiusM);
  const slow = closingSpeed(a, b, line) <= SLOW_MPS;
  const kit = one.number === 0 ? field.kit : field.evenKit;
  const after = afterMeeting(a, b, line, slow ? { ...kit, ballRestitution: 1 } : kit);
  if (!slow) {
    const { xM, yM } = a;
    const [ball, hit] = [one.number, other.number];
    field.events.push({ kind: 'hits-ball', timeS, ball, other: hit, xM, yM });
  }
  field.metS[pairIndex(field, one, other)] = timeS;
  setOff(one, after.one, timeS, field.kit);
  setOff(other, after.other, timeS, field.kit);
  foresee(field, one, timeS);
  foresee(field, other, timeS);
}
