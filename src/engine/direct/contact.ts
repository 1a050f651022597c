import type { BallState } from '../ball/ball-state';
import { type AfterContact, afterContact, kickOf, newKick } from '../impacts/ball-on-ball';
import { strike } from '../impacts/strike';
import type { Kit } from '../kit/kit';
import { type Journey, runTo, travel } from '../motion/journey';
import { objectBallAtRest } from '../motion/object-ball-at-rest';
import { type Motion, type Phase, stateAt } from '../motion/phase';
import { Run } from '../motion/run';
import { bearing, wrapped } from '../numerics/angle';
import type { Stroke } from '../stroke/stroke';
import type { Layout } from './layout';

/** The first touch of the object ball at some aim, in the frame of the straight line. */
export interface Contact {
  readonly cueBall: BallState;
  readonly motion: Motion;
  readonly timeS: number;
  /** Unit vector from the cue ball's centre to the object ball's. */
  readonly nx: number;
  readonly ny: number;
  readonly nz: number;
  readonly after: AfterContact;
}

/** A stroke as far as the object ball. */
export interface Meeting {
  readonly leaving: BallState;
  /** Null where the cue ball does not touch the object ball. */
  readonly contact: Contact | null;
  /** False where the run was given up for having too many phases. */
  readonly complete: boolean;
}

/** A stroke played out until it meets the object ball or rests, with all that lies between. */
export interface Play extends Meeting {
  readonly journey: Journey;
}

/** Plays a stroke until the cue ball meets the object ball or rests. */
export function meet(stroke: Stroke, layout: Layout, kit: Kit): Meeting {
  const leaving = strike(stroke, kit);
  const run = new Run(leaving, 0, kit);
  const sinceS = runTo(run, objectBallAtRest(layout.objectXM, layout.objectYM));
  const contact =
    sinceS === null
      ? null
      : contactAt(stateAt(run.phase, sinceS), run.phase, run.phase.startS + sinceS, layout, kit);
  return { leaving, contact, complete: sinceS !== null || !run.isGivenUp };
}

/** The same, and keeps every phase. */
export function play(stroke: Stroke, layout: Layout, kit: Kit): Play {
  const leaving = strike(stroke, kit);
  const objectBall = objectBallAtRest(layout.objectXM, layout.objectYM);
  const journey = travel(leaving, 0, kit, [objectBall]);
  const { end, endS, complete } = journey;
  const last = journey.phases.at(-1);
  const isMet = journey.met !== null && last !== undefined;
  const contact = isMet ? contactAt(end, last, endS, layout, kit) : null;
  return { leaving, journey, contact, complete };
}

function contactAt(
  cueBall: BallState,
  { motion }: Phase,
  timeS: number,
  layout: Layout,
  kit: Kit,
): Contact {
  const dx = layout.objectXM - cueBall.xM;
  const dy = layout.objectYM - cueBall.yM;
  const length = Math.sqrt(dx * dx + dy * dy + cueBall.zM * cueBall.zM);
  const [nx, ny, nz] = [dx / length, dy / length, -cueBall.zM / length];
  const kick = newKick();
  kickOf(cueBall, nx, ny, nz, kit, kick);
  const after = afterContact(cueBall, nx, ny, nz, kick, kit);
  return { cueBall, motion, timeS, nx, ny, nz, after };
}

/** How far right of the target line the object ball leaves, rad; NaN where it is not touched. */
export function missOf({ contact }: Meeting, cutRad: number): number {
  if (contact === null) return Number.NaN;
  const { vx, vy } = contact.after.objectBall;
  return wrapped(bearing(vx, vy) - cutRad);
}
