import { travel } from '../events/journey';
import type { Kit } from '../model/kit';
import type { Phase } from '../model/phase';
import { strike } from '../model/strike';
import { ContactProber } from './contact-probe';
import { contactRoots } from './contact-roots';
import type { Layout } from './layout';
import type { Shot } from './shot';

/**
 * The cue ball's whole run with nothing in its way, in the frame of the cue: from the origin, the
 * cue along y. On a level bed it is the same for every aim.
 *
 * @param aimRad where the cue points on the table: it says how a tilted bed lies under the path
 */
export function freePath(shot: Shot, kit: Kit, aimRad: number): readonly Phase[] {
  const { side, height, elevationRad, speedMps } = shot;
  const turnedKit = { ...kit, bedSlope: slopeUnder(kit, aimRad) };
  const leaving = strike({ aimRad: 0, side, height, elevationRad, speedMps }, turnedKit);
  return travel(leaving, 0, turnedKit, []).phases;
}

function slopeUnder(kit: Kit, aimRad: number): Kit['bedSlope'] {
  const { alongM_per_M: along, rightM_per_M: right } = kit.bedSlope;
  const [c, s] = [Math.cos(aimRad), Math.sin(aimRad)];
  return { alongM_per_M: along * c + right * s, rightM_per_M: right * c - along * s };
}

/** Whether the path is the same for every aim. */
export function isLevel(kit: Kit): boolean {
  return kit.bedSlope.alongM_per_M === 0 && kit.bedSlope.rightM_per_M === 0;
}

/** Aims whose path holds a contact that sends the object ball along the target line, unordered. */
export function candidateAims(shot: Shot, layout: Layout, kit: Kit): number[] {
  const prober = new ContactProber(layout, shot.cutRad, kit);
  const rootsAt = (aimRad: number) => contactRoots(freePath(shot, kit, aimRad), prober);
  return isLevel(kit) ? rootsAt(0) : tiltedAims(rootsAt);
}

/** Aims under which a tilted bed's path is tried where the first ones show no contact, rad. */
const SEEDS = [0, -0.03, 0.03, -0.1, 0.1, -0.3, 0.3, -0.6, 0.6];
const MAX_ROUNDS = 12;
/** Absolute, rad: at a metre and a half, a millionth of a degree in the object ball's direction. */
const SETTLED = 1e-10;

/**
 * On a tilted bed the path depends on the aim it is to find: each candidate is carried to the fixed
 * point at which the aim under the path is the aim it gives, by secant steps. The dependence is
 * slight, for the bed bends a path by little, so a handful of rounds settle it.
 */
function tiltedAims(rootsAt: (aimRad: number) => number[]): number[] {
  for (const seed of SEEDS) {
    const aims = rootsAt(seed)
      .map((first) => settle(rootsAt, seed, first))
      .filter((aim): aim is number => aim !== null);
    if (aims.length > 0) return aims;
  }
  return [];
}

function settle(rootsAt: (aimRad: number) => number[], seed: number, first: number): number | null {
  let [under, shift] = [seed, first - seed];
  let next = first;
  for (let round = 0; round < MAX_ROUNDS; round++) {
    const gives = nearest(rootsAt(next), next);
    if (gives === null) return null;
    const shiftNow = gives - next;
    if (Math.abs(shiftNow) <= SETTLED) return gives;
    const slope = (shiftNow - shift) / (next - under);
    [under, shift] = [next, shiftNow];
    next = slope < 0 ? next - shiftNow / slope : gives;
  }
  // Not settled, but perhaps good enough: playing it out will tell.
  return next;
}

function nearest(aims: readonly number[], to: number): number | null {
  let best: number | null = null;
  for (const aim of aims) {
    if (best === null || Math.abs(aim - to) < Math.abs(best - to)) best = aim;
  }
  return best;
}
