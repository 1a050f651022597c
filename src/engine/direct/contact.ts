import type { BallState } from '../ball/ball-state';
import { type AfterContact, afterContact, kickOf, newKick } from '../impacts/ball-on-ball';
import { strike } from '../impacts/strike';
import type { Kit } from '../kit/kit';
import { type Journey, travel } from '../motion/journey';
import { objectBallAtRest } from '../motion/object-ball-at-rest';
import type { Motion } from '../motion/phase';
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

/** A stroke played out until it meets the object ball or rests. */
export interface Play {
  readonly leaving: BallState;
  readonly journey: Journey;
  readonly contact: Contact | null;
}

/** Plays a stroke until the cue ball meets the object ball or rests. */
export function play(stroke: Stroke, layout: Layout, kit: Kit): Play {
  const leaving = strike(stroke, kit);
  const objectBall = objectBallAtRest(layout.objectXM, layout.objectYM);
  const journey = travel(leaving, 0, kit, [objectBall]);
  return { leaving, journey, contact: journey.met && contactOf(journey, layout, kit) };
}

function contactOf(journey: Journey, layout: Layout, kit: Kit): Contact {
  const cueBall = journey.end;
  const dx = layout.objectXM - cueBall.xM;
  const dy = layout.objectYM - cueBall.yM;
  const length = Math.sqrt(dx * dx + dy * dy + cueBall.zM * cueBall.zM);
  const [nx, ny, nz] = [dx / length, dy / length, -cueBall.zM / length];
  const kick = newKick();
  kickOf(cueBall, nx, ny, nz, kit, kick);
  return {
    cueBall,
    motion: journey.phases.at(-1)?.motion ?? 'sliding',
    timeS: journey.endS,
    nx,
    ny,
    nz,
    after: afterContact(cueBall, nx, ny, nz, kick, kit),
  };
}

/** How far right of the target line the object ball leaves, rad; NaN where it is not touched. */
export function missOf({ contact }: Play, cutRad: number): number {
  if (contact === null) return Number.NaN;
  const { vx, vy } = contact.after.objectBall;
  return wrapped(bearing(vx, vy) - cutRad);
}
