import { isWithin } from '../numerics/range';
import { STROKE_RANGES } from '../stroke/stroke';

/** The aims that the path under a given aim would give, rad. */
export type RootsUnder = (aimRad: number) => readonly number[];

/** How far right of the target line the object ball goes, rad, and how that hangs on the aim. */
export interface PlayedMiss {
  /** NaN where the object ball is missed. */
  readonly missRad: number;
  /** About how far further right to aim for each rad of it. */
  readonly aimPerMiss: number;
}

export type MissAt = (aimRad: number) => PlayedMiss;

/**
 * Aims under which the path is tried where the first ones show no contact, rad. Close together, for
 * a ball that dies by the object ball may reach it under few aims; wide, for a massé needs it.
 */
const SEEDS = [
  0,
  ...[0.03, 0.06, 0.1, 0.15, 0.2, 0.3, 0.4, 0.5, 0.65, 0.8, 1, 1.2, 1.4].flatMap((size) => [
    -size,
    size,
  ]),
];
const MAX_ROUNDS = 12;
/** Paths tried before giving up: what settles at all has settled long before. */
const MOST_PATHS = 60;
/** A path with this many roots counts double: to find them, and to try them, costs as much more. */
const ROOTS_OF_A_PATH = 4;
/** Absolute, rad: at a metre and a half, a millionth of a degree in the object ball's direction. */
const SETTLED = 1e-10;

/**
 * Candidate aims on a tilted bed, where the path depends on the aim that is sought, if slightly:
 * each root of a path is carried to where it holds under its own aim, by playing it. Where that
 * loses the object ball, at the thinnest contacts, the paths themselves are solved again and again.
 */
export function tiltedAims(rootsUnder: RootsUnder, missAt: MissAt): number[] {
  let paths = 0;
  const counted: RootsUnder = (aimRad) => {
    if (paths >= MOST_PATHS) return [];
    const roots = rootsUnder(aimRad);
    paths += 1 + roots.length / ROOTS_OF_A_PATH;
    return roots;
  };
  for (const seed of SEEDS) {
    // The smallest first: it is the one to be told, should the paths run out.
    const aims = [...counted(seed)]
      .sort((a, b) => Math.abs(a) - Math.abs(b))
      .map((first) => playedTo(missAt, first) ?? fixedPoint(counted, seed, first))
      .filter((aim) => isWithin(STROKE_RANGES.aimRad, aim));
    if (aims.length > 0 || paths >= MOST_PATHS) return aims;
  }
  return [];
}

/** Secant steps on the played miss; null where the object ball is missed or nothing settles. */
function playedTo(missAt: MissAt, first: number): number | null {
  const { missRad, aimPerMiss } = missAt(first);
  let [before, missBefore] = [first, missRad];
  let aim = first + aimPerMiss * missBefore;
  for (let round = 0; round < MAX_ROUNDS; round++) {
    const miss = missAt(aim).missRad;
    if (Number.isNaN(miss)) return null;
    if (Math.abs(miss) <= SETTLED) return aim;
    const slope = (miss - missBefore) / (aim - before);
    [before, missBefore] = [aim, miss];
    aim -= miss / slope;
  }
  return null;
}

/** Secant steps towards the aim whose own path gives it. */
function fixedPoint(rootsUnder: RootsUnder, seed: number, first: number): number | null {
  let [under, shift] = [seed, first - seed];
  let next = first;
  for (let round = 0; round < MAX_ROUNDS; round++) {
    const gives = nearest(rootsUnder(next), next);
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
