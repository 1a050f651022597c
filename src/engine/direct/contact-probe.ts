import { type Kick, kickOf, newKick } from '../impacts/ball-on-ball';
import type { Kit } from '../kit/kit';
import { newPlace, type Phase, type Place, placeAt, stateFrom } from '../motion/phase';
import { bearing, wrapped } from '../numerics/angle';
import type { Layout } from './layout';

/** On which side of the cue ball's way, seen from its start, the object ball is. */
export type Flank = -1 | 1;

/**
 * The inverse problem turned round. A path runs from the origin as the cue points, at aim 0; where
 * the object ball would have to lie for the cue ball to touch it at a given instant of that path
 * follows from a triangle, and so does the aim that puts it there. Aim, line of centres and object
 * ball's direction are then plain functions of the instant, with no search for first touch.
 */
export interface ContactProbe {
  /** The aim of that contact, rad. */
  aimRad: number;
  /** Unit vector between the centres, in the path's own frame. */
  nx: number;
  ny: number;
  nz: number;
  /** Bearing of the line of centres from the straight line, rad. */
  lineRad: number;
  /** Speed at which the balls close, m/s; below 0 they part. */
  closingMps: number;
}

/** Answers probes for one layout and kit; owns the scratch it writes to. */
export class ContactProber {
  readonly probe: ContactProbe = { aimRad: 0, nx: 0, ny: 1, nz: 0, lineRad: 0, closingMps: 0 };
  readonly place: Place = newPlace();
  private readonly kick: Kick = newKick();

  constructor(
    private readonly layout: Layout,
    private readonly cutRad: number,
    private readonly kit: Kit,
  ) {}

  /**
   * How far the path's place now, in `place`, is from touching range, m; ≤ 0 within it. The object
   * ball's possible centres form a circle around the start; touching range is a tube around that.
   */
  gapM(): number {
    const { xM, yM, zM } = this.place;
    const radial = Math.sqrt(xM * xM + yM * yM) - this.layout.separationM;
    return Math.sqrt(radial * radial + zM * zM) - this.layout.reachM;
  }

  /** Fills `place` and `probe` for the contact at an instant; just outside range, as at its rim. */
  look(phase: Phase, timeS: number, flank: Flank): ContactProbe {
    placeAt(phase, timeS, this.place);
    this.lookFromPlace(flank);
    return this.probe;
  }

  /** Fills `probe` from `place` as it is. */
  lookFromPlace(flank: Flank): void {
    const { probe, place, layout } = this;
    const { xM, yM, zM } = place;
    const away = Math.sqrt(xM * xM + yM * yM);
    const reachPlan2 = Math.max(0, layout.reachM * layout.reachM - zM * zM);
    const short = layout.separationM - away;
    const half2 = (reachPlan2 - short * short) / (4 * away * layout.separationM);
    const off = 2 * Math.asin(Math.sqrt(Math.min(1, Math.max(0, half2))));
    const objectBearing = bearing(xM, yM) + flank * off;
    const dx = layout.separationM * Math.sin(objectBearing) - xM;
    const dy = layout.separationM * Math.cos(objectBearing) - yM;
    const length = Math.sqrt(dx * dx + dy * dy + zM * zM);
    probe.nx = dx / length;
    probe.ny = dy / length;
    probe.nz = -zM / length;
    probe.aimRad = wrapped(layout.bearingRad - objectBearing);
    probe.lineRad = bearing(dx, dy) + probe.aimRad;
    probe.closingMps = place.vx * probe.nx + place.vy * probe.ny + place.vz * probe.nz;
  }

  /** How far right of the target line the line of centres of the last look points, rad. */
  lineMiss(): number {
    return wrapped(this.probe.lineRad - this.cutRad);
  }

  /** How far right of the target line the object ball of the last look, at that time, goes, rad. */
  objectMiss(phase: Phase, timeS: number): number {
    const { probe, place, kick } = this;
    kickOf(stateFrom(phase, timeS, place), probe.nx, probe.ny, probe.nz, this.kit, kick);
    return wrapped(bearing(kick.x, kick.y) + probe.aimRad - this.cutRad);
  }

  /**
   * The most by which friction can turn the object ball off the line of centres of the last look,
   * rad: it adds at most μ times the normal impulse, whose level part shrinks as the cue ball rides
   * higher.
   */
  mostThrow(): number {
    const { a, b } = this.kit.ballFriction;
    const { nx, ny } = this.probe;
    const levelShare = Math.sqrt(nx * nx + ny * ny);
    return a + b < levelShare ? Math.asin((a + b) / levelShare) : Math.PI;
  }
}
