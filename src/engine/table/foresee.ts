import { cushionTime, overCushionTime } from './approach-cushion';
import { dropTime } from './approach-drop';
import { meetingTime } from './approach-pair';
import type { Field, OwnEvent } from './field';
import { type Mover, phaseEnd } from './mover';
import { areApart, isInside } from './plan-box';

/** Works out anew all that a ball comes to next, now (s) that its motion has changed. */
export function foresee(field: Field, mover: Mover, nowS: number): void {
  foreseeOwn(field, mover, nowS);
  const { movers, meetS } = field;
  const withinM = 2 * field.kit.ballRadiusM;
  const { minX, maxX, minY, maxY } = mover.box;
  for (const other of movers) {
    // Most are far off and were so before: told here, for it is asked more often than all else.
    const { box } = other;
    const isApart =
      minX - box.maxX > withinM ||
      box.minX - maxX > withinM ||
      minY - box.maxY > withinM ||
      box.minY - maxY > withinM;
    const [i, j] = [Math.min(mover.number, other.number), Math.max(mover.number, other.number)];
    if (isApart && meetS[i * movers.length + j] === Number.POSITIVE_INFINITY) continue;
    if (other !== mover) foreseeMeeting(field, mover, other, nowS);
  }
}

/** Works out anew when two balls meet. */
export function foreseeMeeting(field: Field, a: Mover, b: Mover, nowS: number): void {
  const [one, other] = a.number < b.number ? [a, b] : [b, a];
  const at = pairIndex(field, one, other);
  const timeS =
    one.gone !== null || other.gone !== null
      ? Number.POSITIVE_INFINITY
      : meetingTime(field, one, other, nowS, field.metS[at] ?? Number.NEGATIVE_INFINITY);
  noteMeeting(field, one.number, other.number, timeS);
}

/** Notes when balls i < j meet, and keeps whom i meets first: of those at one moment the lowest. */
function noteMeeting({ meetS, nextMet, movers }: Field, i: number, j: number, timeS: number): void {
  const row = i * movers.length;
  const next = nextMet[i] ?? j;
  const soonestS = meetS[row + next] ?? Number.POSITIVE_INFINITY;
  meetS[row + j] = timeS;
  if (next !== j) {
    if (timeS < soonestS || (timeS === soonestS && j < next)) nextMet[i] = j;
  } else if (timeS > soonestS) {
    nextMet[i] = soonestOfRow(meetS, row, i + 1, movers.length);
  }
}

function soonestOfRow(meetS: Float64Array, row: number, from: number, to: number): number {
  let soonest = from;
  for (let j = from + 1; j < to; j++) {
    if ((meetS[row + j] ?? 0) < (meetS[row + soonest] ?? 0)) soonest = j;
  }
  return soonest;
}

export function pairIndex(field: Field, one: Mover, other: Mover): number {
  return one.number * field.movers.length + other.number;
}

export function cushionIndex(field: Field, mover: Mover, cushion: number): number {
  return mover.number * field.cushions.length + cushion;
}

/** Works out anew what a ball comes to by itself. */
export function foreseeOwn(field: Field, mover: Mover, nowS: number): void {
  const own = field.own[mover.number];
  if (own === undefined) return;
  own.kind = 'phase-ends';
  own.timeS = phaseEnd(mover);
  if (mover.phase === null || isInside(mover.box, field.open)) return;
  foreseeCushions(field, mover, own, nowS);
  foreseeDrops(field, mover, own, nowS);
}

function foreseeCushions(field: Field, mover: Mover, own: OwnEvent, nowS: number): void {
  const isFlying = mover.phase?.motion === 'flying';
  for (let index = 0; index < field.cushions.length; index++) {
    const shape = field.cushions[index];
    if (shape === undefined) continue;
    if (areApart(mover.box, shape.box, field.kit.ballRadiusM)) continue;
    const metS = field.cushionMetS[cushionIndex(field, mover, index)] ?? Number.NEGATIVE_INFINITY;
    sooner(own, 'cushion', index, cushionTime(field, mover, shape, nowS, own.timeS, metS));
    if (!isFlying) continue;
    sooner(own, 'over-cushion', index, overCushionTime(field, mover, shape, nowS, own.timeS));
  }
}

function foreseeDrops(field: Field, mover: Mover, own: OwnEvent, nowS: number): void {
  for (let index = 0; index < field.pockets.length; index++) {
    const shape = field.pockets[index];
    if (shape === undefined || areApart(mover.box, shape.box, 0)) continue;
    sooner(own, 'drop', index, dropTime(field, mover, shape, nowS, own.timeS));
  }
}

function sooner(own: OwnEvent, kind: OwnEvent['kind'], index: number, timeS: number): void {
  if (!(timeS < own.timeS)) return;
  own.kind = kind;
  own.index = index;
  own.timeS = timeS;
}
