import type { Shot } from '../../../src/engine/direct/shot';
import type { Kit } from '../../../src/engine/kit/kit';
import type { PathOptions } from './cue-ball-path';
import { objectBallAt, playShot } from './play-shot';
import { tipStrike } from './tip-strike';

/** An aim, and how far right of the target line it sends the object ball, rad; NaN: missed. */
interface Try {
  readonly aimRad: number;
  readonly miss: number;
}

const MAX_TRIES = 60;

/**
 * The aim by playing shots: a first guess from geometry and squirt, a search outwards for a touch if
 * need be, then secant steps that never leave the bracket once there is one.
 *
 * @param tolerance of the object ball's direction, rad
 * @returns the aim, rad, or null where the search gives up
 */
export function findAim(
  shot: Shot,
  kit: Kit,
  options: PathOptions,
  tolerance: number,
): number | null {
  const [ox, oy] = objectBallAt(shot, kit);
  // An aim error comes back d/(2R cos φ) times in the object ball, on the other side.
  const gain = shot.distanceM / (2 * kit.ballRadiusM * Math.max(0.2, Math.cos(shot.cutRad)));
  const attempt = (aimRad: number): Try => {
    const velocity = playShot(shot, kit, aimRad, options).impact?.objectBall.velocity;
    if (velocity === undefined) return { aimRad, miss: Number.NaN };
    const off = Math.atan2(velocity[0], velocity[1]) - shot.cutRad;
    return { aimRad, miss: Math.atan2(Math.sin(off), Math.cos(off)) };
  };

  const [sx, sy] = tipStrike(shot, 0, kit).velocity;
  const ballWidths = (2 * kit.ballRadiusM) / Math.hypot(ox, oy);
  const first = firstTouch(attempt, -Math.atan2(sx, sy), ballWidths / 2);
  if (first === null) return null;
  return polish(attempt, first, 1 / gain, tolerance);
}

/** Tries aims further and further to both sides of a guess until one touches. */
function firstTouch(attempt: (aimRad: number) => Try, guess: number, step: number): Try | null {
  for (let count = 0; count < MAX_TRIES; count++) {
    const tried = attempt(guess + (count % 2 === 0 ? 1 : -1) * Math.ceil(count / 2) * step);
    if (!Number.isNaN(tried.miss)) return tried;
  }
  return null;
}

/** Secant within what is known: aiming right of the root sends the object ball too far left. */
function polish(
  attempt: (aimRad: number) => Try,
  first: Try,
  firstSlope: number,
  tolerance: number,
): number | null {
  let [before, now]: [Try | null, Try] = [null, first];
  let [left, right] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (let count = 0; count < MAX_TRIES; count++) {
    if (Math.abs(now.miss) <= tolerance) return now.aimRad;
    if (now.miss > 0) left = Math.max(left, now.aimRad);
    else right = Math.min(right, now.aimRad);
    const slope =
      before === null ? -firstSlope : (now.aimRad - before.aimRad) / (now.miss - before.miss);
    let next = now.aimRad - now.miss * slope;
    if (!(next > left && next < right)) next = (left + right) / 2;
    let tried = attempt(next);
    // Off the object ball's edge: back towards what touched.
    for (let back = 0; back < 20 && Number.isNaN(tried.miss); back++) {
      next = (next + now.aimRad) / 2;
      tried = attempt(next);
    }
    if (!Number.isFinite(tried.miss)) return null;
    [before, now] = [now, tried];
  }
  return null;
}
