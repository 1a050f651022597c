import { type Kick, kickOf, newKick } from '../impacts/ball-on-ball';
import type { Kit } from '../kit/kit';
import { fillSpin, newPlace, type Phase, placeAt } from '../motion/phase';
import type { Watch } from '../motion/run';
import { bearing, roughBearing, wrapped } from '../numerics/angle';
import { length } from '../numerics/length';
import type { Layout } from './layout';

/** On which side of the cue ball's way, seen from its start, the object ball is. */
export type Flank = -1 | 1;

/** Both of them. */
export const FLANKS: readonly Flank[] = [-1, 1];

/**
 * The inverse problem turned round. A path runs from the origin as the cue points, at aim 0; where
 * the object ball would have to lie for the cue ball to touch it at a given instant of that path
 * follows from a triangle, and so does the aim that puts it there. Aim, line of centres and object
 * ball's direction are then plain functions of the instant, with no search for first touch.
 *
 * A prober answers for one layout and kit. It owns the scratch it writes to: what it tells is of the
 * last look.
 */
export class ContactProber implements Watch {
  /** The cue ball at the instant. */
  readonly place = newPlace();
  /** Unit vector between the centres, in the path's own frame. */
  nx = 0;
  ny = 1;
  nz = 0;
  /** Speed at which the balls close, m/s; below 0 they part. */
  closingMps = 0;

  /** The cue ball's distance from the origin in plan, m. */
  private awayM = 0;
  /** Of half the angle at the origin between cue ball and object ball the sine, squared. */
  private half2 = 0;
  /** The object ball from the cue ball, m: the way it lies from the origin, and square to that. */
  private alongM = 0;
  private asideM = 0;
  /** How far apart the centres are, m, squared. */
  private apart2 = 1;
  private flank: Flank = 1;
  /** Where the object ball lies, seen from the origin: a unit vector in the path's frame. */
  private objectX = 0;
  private objectY = 1;
  /** From the cue ball to the object ball in plan, m: along the target line, and right of it. */
  private lineAlongM = 0;
  private lineRightM = 0;
  private readonly kick: Kick = newKick();
  /** From the object ball's bearing at the start to the target line. */
  private readonly cosOff: number;
  private readonly sinOff: number;
  /** Friction of two balls at most, squared. */
  private readonly mostFriction2: number;

  constructor(
    private readonly layout: Layout,
    cutRad: number,
    private readonly kit: Kit,
  ) {
    const { a, b } = kit.ballFriction;
    this.cosOff = Math.cos(layout.bearingRad - cutRad);
    this.sinOff = Math.sin(layout.bearingRad - cutRad);
    this.mostFriction2 = (a + b) * (a + b);
  }

  /**
   * How far from touching range `place` is, m; ≤ 0 within it. The object ball's possible centres form
   * a circle around the start; touching range is a tube around that.
   */
  gapM(): number {
    const { xM, yM, zM } = this.place;
    const radial = Math.sqrt(xM * xM + yM * yM) - this.layout.separationM;
    return Math.sqrt(radial * radial + zM * zM) - this.layout.reachM;
  }

  clearM(xM: number, yM: number): number {
    return Math.abs(length(xM, yM) - this.layout.separationM) - this.layout.reachM;
  }

  /** Looks at the contact at an instant; just outside range, as at its rim. */
  look(phase: Phase, timeS: number, flank: Flank): void {
    this.goTo(phase, timeS);
    this.lookAlongLine(flank);
    this.lookAtContact(phase, timeS);
  }

  /** Goes to an instant of a path, s since the phase's start. */
  goTo(phase: Phase, timeS: number): void {
    placeAt(phase, timeS, this.place);
    const { xM, yM, zM } = this.place;
    const { separationM, reachM } = this.layout;
    const awayM = Math.sqrt(xM * xM + yM * yM);
    const shortM = separationM - awayM;
    const wanted = (reachM * reachM - zM * zM - shortM * shortM) / (4 * awayM * separationM);
    const half2 = Math.min(1, Math.max(0, wanted));
    const alongM = shortM + 2 * awayM * half2;
    const asideM = 2 * awayM * Math.sqrt(half2 * (1 - half2));
    this.awayM = awayM;
    this.half2 = half2;
    this.alongM = alongM;
    this.asideM = asideM;
    this.apart2 = alongM * alongM + asideM * asideM + zM * zM;
  }

  /** Looks where the line of centres points at that instant, and at nothing else. */
  lookAlongLine(flank: Flank): void {
    const { alongM, cosOff, sinOff } = this;
    const rightM = flank * this.asideM;
    this.flank = flank;
    this.lineAlongM = alongM * cosOff - rightM * sinOff;
    this.lineRightM = rightM * cosOff + alongM * sinOff;
  }

  /** Looks at the rest of that contact. */
  lookAtContact(phase: Phase, timeS: number): void {
    const { place, flank, awayM, half2 } = this;
    fillSpin(phase, timeS, place);
    const { xM, yM, zM } = place;
    const apartM = Math.sqrt(this.apart2);
    const along = this.alongM / apartM;
    const right = (flank * this.asideM) / apartM;
    const cos = 1 - 2 * half2;
    const sin = (flank * this.asideM) / awayM;
    this.objectX = (xM * cos + yM * sin) / awayM;
    this.objectY = (yM * cos - xM * sin) / awayM;
    this.nx = along * this.objectX + right * this.objectY;
    this.ny = along * this.objectY - right * this.objectX;
    this.nz = -zM / apartM;
    this.closingMps = place.vx * this.nx + place.vy * this.ny + place.vz * this.nz;
  }

  /** The aim of that contact, rad. */
  aimRad(): number {
    const turn = this.flank * 2 * Math.asin(Math.sqrt(this.half2));
    return wrapped(this.layout.bearingRad - bearing(this.place.xM, this.place.yM) - turn);
  }

  /** How far right of the target line the line of centres points, as a {@link roughBearing}. */
  lineMiss(): number {
    return roughBearing(this.lineRightM, this.lineAlongM);
  }

  /** How far right of the target line the object ball goes, rad. */
  objectMiss(): number {
    this.fillKick();
    return bearing(this.objectRight(), this.objectAlong());
  }

  /** The same as a {@link roughBearing}. */
  roughMiss(): number {
    this.fillKick();
    return roughBearing(this.objectRight(), this.objectAlong());
  }

  /**
   * Whether the line of centres alone tells on which side the object ball goes: friction adds at most
   * μ times the normal impulse, whose level part shrinks as the cue ball rides higher.
   */
  isToldByLine(): boolean {
    const { lineAlongM, lineRightM, place } = this;
    const most2 = this.mostFriction2 * this.apart2;
    const isSmall = this.apart2 - place.zM * place.zM > most2;
    return isSmall && (lineAlongM < 0 || lineRightM * lineRightM > most2);
  }

  private fillKick(): void {
    kickOf(this.place, this.nx, this.ny, this.nz, this.kit, this.kick);
  }

  private objectAlong(): number {
    const { kick, objectX, objectY, cosOff, sinOff } = this;
    const along = kick.x * objectX + kick.y * objectY;
    return along * cosOff - (kick.x * objectY - kick.y * objectX) * sinOff;
  }

  private objectRight(): number {
    const { kick, objectX, objectY, cosOff, sinOff } = this;
    const along = kick.x * objectX + kick.y * objectY;
    return (kick.x * objectY - kick.y * objectX) * cosOff + along * sinOff;
  }
}
