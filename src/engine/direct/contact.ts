import type { BallState } from '../ball/ball-state';
import {
  type AfterContact,
  afterContact,
  kickOf,
  newKick,
  objectBallAfter,
} from '../impacts/ball-on-ball';
import { strike } from '../impacts/strike';
import type { Kit } from '../kit/kit';
import { type Journey, runTo, travel } from '../motion/journey';
import { objectBallAtRest } from '../motion/object-ball-at-rest';
import { type Motion, stateAt } from '../motion/phase';
import { Run } from '../motion/run';
import { bearing, wrapped } from '../numerics/angle';
import type { Stroke } from '../stroke/stroke';
import type { Layout } from './layout';

/** The first touch of the object ball at some aim, in the frame of the straight line. */
export class Contact {
  /** Unit vector from the cue ball's centre to the object ball's. */
  readonly nx: number;
  readonly ny: number;
  readonly nz: number;
  private readonly kick = newKick();

  constructor(
    readonly cueBall: BallState,
    readonly motion: Motion,
    readonly timeS: number,
    layout: Layout,
    private readonly kit: Kit,
  ) {
    const dx = layout.objectXM - cueBall.xM;
    const dy = layout.objectYM - cueBall.yM;
    const apartM = Math.sqrt(dx * dx + dy * dy + cueBall.zM * cueBall.zM);
    this.nx = dx / apartM;
    this.ny = dy / apartM;
    this.nz = -cueBall.zM / apartM;
    kickOf(cueBall, this.nx, this.ny, this.nz, kit, this.kick);
  }

  /** Both balls just after it; worked out whenever it is asked for, for most ask for less. */
  get after(): AfterContact {
    return afterContact(this.cueBall, this.nx, this.ny, this.nz, this.kick, this.kit);
  }

  /** The object ball just after it. */
  get objectBall(): BallState {
    return objectBallAfter(this.cueBall, this.nx, this.ny, this.nz, this.kick, this.kit);
  }

  /** Direction in which the object ball leaves, rad from the straight line, right +. */
  get objectRad(): number {
    return bearing(this.kick.x, this.kick.y);
  }
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

/** Plays strokes at the balls of one layout. It owns the scratch it writes to, and its answers none. */
export class Striker {
  private readonly run: Run;
  private readonly objectBall;

  constructor(private readonly layout: Layout) {
    this.run = new Run();
    this.objectBall = objectBallAtRest(layout.objectXM, layout.objectYM);
  }

  /** Plays a stroke until the cue ball meets the object ball or rests. */
  meet(stroke: Stroke, kit: Kit): Meeting {
    const { run } = this;
    const leaving = strike(stroke, kit);
    run.begin(leaving, 0, kit);
    const sinceS = runTo(run, this.objectBall);
    if (sinceS === null) return { leaving, contact: null, complete: !run.isGivenUp };
    const { phase } = run;
    const cueBall = stateAt(phase, sinceS);
    const timeS = phase.startS + sinceS;
    const contact = new Contact(cueBall, phase.motion, timeS, this.layout, kit);
    return { leaving, contact, complete: true };
  }
}

/** One stroke of a {@link Striker}. */
export function meet(stroke: Stroke, layout: Layout, kit: Kit): Meeting {
  return new Striker(layout).meet(stroke, kit);
}

/** The same, and keeps every phase. */
export function play(stroke: Stroke, layout: Layout, kit: Kit): Play {
  const leaving = strike(stroke, kit);
  const objectBall = objectBallAtRest(layout.objectXM, layout.objectYM);
  const journey = travel(leaving, 0, kit, [objectBall]);
  const { end, endS, complete } = journey;
  const last = journey.phases.at(-1);
  const isMet = journey.met !== null && last !== undefined;
  const contact = isMet ? new Contact(end, last.motion, endS, layout, kit) : null;
  return { leaving, journey, contact, complete };
}

/** How far right of the target line the object ball leaves, rad; NaN where it is not touched. */
export function missOf({ contact }: Meeting, cutRad: number): number {
  return contact === null ? Number.NaN : wrapped(contact.objectRad - cutRad);
}
