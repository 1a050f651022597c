import { endState, type Motion } from '../motion/phase';
import { answerCushion } from './answer-cushion';
import { lookAtDrop } from './approach-drop';
import type { Field, OwnEvent } from './field';
import { foresee, foreseeOwn } from './foresee';
import { type Mover, setOff, stateOf, takeOff } from './mover';
import { isTouch } from './slow-touch';

/** What a ball does once a phase has ended by itself. */
const ENDS = { flying: 'lands', sliding: 'rolls', rolling: 'rests' } as const satisfies Record<
  Motion,
  string
>;

/** Hops and slips shorter than this, s, are played but not told: they leave the bed by 1 µm. */
const TOLD_S = 1e-3;

/** Plays what a ball comes to by itself. */
export function answerOwn(field: Field, mover: Mover, own: OwnEvent): void {
  const { timeS, index } = own;
  if (own.kind === 'phase-ends') endPhase(field, mover, timeS);
  else if (own.kind === 'cushion') answerCushion(field, mover, index, timeS);
  else if (own.kind === 'over-cushion') leaveTable(field, mover, timeS);
  else answerDrop(field, mover, index, timeS);
}

function endPhase(field: Field, mover: Mover, timeS: number): void {
  const { phase } = mover;
  if (phase === null) return;
  const { motion, durationS } = phase;
  setOff(mover, endState(phase), timeS, field.kit);
  const kind = mover.phase === null ? 'rests' : ENDS[motion];
  const { xM, yM } = mover.state;
  if (kind === 'rests' || durationS > TOLD_S) {
    field.events.push({ kind, timeS, ball: mover.number, xM, yM });
  }
  foresee(field, mover, timeS);
}

/** A ball over a hole falls, unless it flies higher than the noses. */
function answerDrop(field: Field, mover: Mover, index: number, timeS: number): void {
  const pocket = field.pockets[index];
  if (pocket === undefined) return;
  lookAtDrop(field, mover, pocket, timeS);
  if (!isTouch(field.scratch.approach)) {
    foreseeOwn(field, mover, timeS);
    return;
  }
  const ball = stateOf(mover, timeS, field.kit);
  if (ball.zM > field.kit.cushion.noseHeight * field.kit.ballRadiusM) {
    leaveTable(field, mover, timeS);
    return;
  }
  const { xM, yM } = ball;
  const { name } = pocket;
  field.events.push({ kind: 'pocketed', timeS, ball: mover.number, xM, yM, pocket: name });
  takeOff(mover, { kind: 'pocketed', pocket: name, timeS }, ball, timeS);
  foresee(field, mover, timeS);
}

function leaveTable(field: Field, mover: Mover, timeS: number): void {
  const ball = stateOf(mover, timeS, field.kit);
  const { xM, yM } = ball;
  field.events.push({ kind: 'off-table', timeS, ball: mover.number, xM, yM });
  takeOff(mover, { kind: 'off-table', xM, yM, timeS }, ball, timeS);
  foresee(field, mover, timeS);
}
