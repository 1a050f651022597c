import { STANDARD_GRAVITY as g } from '../ball/gravity';
import type { Kit } from '../kit/kit';
import { playTable } from '../table/play-table';
import type { PocketShape } from '../table/pocket-shape';
import type { Point } from '../table/point';
import type { TableShape } from '../table/table-shape';
import { type OpenWay, openWay } from './open-way';

/** How fast the ball comes to the mouth, m/s: slow, medium, fast (common practice, no source). */
const SLOW_MPS = 0.5;
const MEDIUM_MPS = 1.5;
const FAST_MPS = 3;
/** Struck so high a ball rolls at once: 2/5 of R above centre (Coriolis 1835). */
const ROLLING_HEIGHT = 0.4;
/** A step outward from the middle, as a share of the half that is open; and how far to look. */
const STEP_SHARE = 1 / 4;
const MOST_SHARE = 2.5;
const HALVINGS = 4;
/** More than a ball does that falls; what is still about after so many rattled out. */
const MOST_EVENTS = 24;

/** Whether a ball sent so many half angles right of the middle, at so fast an arrival, falls. */
type Falls = (share: number, arrivesMps: number) => boolean;

/**
 * The directions in which a ball at some place falls into a pocket, by playing it there: a ball
 * that touches a point may still fall, and one that runs along a rail may be thrown out by the far
 * jaw. They are looked for around the middle of the {@link openWay}, outward to the first that
 * fails, at a medium speed; how they narrow and widen with the speed comes with them. Down a
 * rail a slow ball has up to half as much again. Where the middle itself does not fall, for what lies
 * between, it is all that is open. Null where nothing is.
 */
export function fallingWay(
  from: Point,
  pocket: PocketShape,
  shape: TableShape,
  kit: Kit,
): OpenWay | null {
  const open = openWay(from, pocket, shape, kit);
  if (open === null) return null;
  const falls = byPlaying(open, from, pocket, shape, kit);
  const medium = edges(falls, MEDIUM_MPS);
  if (medium === null) return open;
  const half = open.halfAngleRad;
  const byRad = medium.middle * half;
  const openings = [SLOW_MPS, MEDIUM_MPS, FAST_MPS].flatMap((speedMps) => {
    const at = speedMps === MEDIUM_MPS ? medium : edges(falls, speedMps);
    if (at === null) return [];
    return { speedMps, middleRad: at.middle * half - byRad, halfAngleRad: at.half * half };
  });
  return {
    ...open,
    alongRad: open.alongRad + byRad,
    halfAngleRad: medium.half * half,
    openings,
  };
}

function byPlaying(
  { alongRad, halfAngleRad, distanceM }: OpenWay,
  from: Point,
  pocket: PocketShape,
  shape: TableShape,
  kit: Kit,
): Falls {
  // Without end mass the cue does not drive the ball into the bed.
  const plain = {
    ...kit,
    massRatio: Number.POSITIVE_INFINITY,
    bedSlope: { alongM_per_M: 0, rightM_per_M: 0 },
  };
  return (share, arrivesMps) => {
    const aimRad = alongRad + share * halfAngleRad;
    const speedMps = Math.sqrt(arrivesMps ** 2 + 2 * kit.rollFriction * g * distanceM);
    const stroke = { aimRad, side: 0, height: ROLLING_HEIGHT, elevationRad: 0, speedMps };
    const options = { mostEvents: MOST_EVENTS, endsOnly: true };
    const play = playTable([{ xM: from.x, yM: from.y }], stroke, plain, shape, options);
    const outcome = play.ok ? play.balls[0]?.outcome : undefined;
    return outcome?.kind === 'pocketed' && outcome.pocket === pocket.name;
  };
}

/** Middle and half width of what falls at a speed, in half angles; null where the middle does not. */
function edges(falls: Falls, arrivesMps: number): { middle: number; half: number } | null {
  const does = (share: number) => falls(share, arrivesMps);
  if (!does(0)) return null;
  const [low, high] = [edge(does, -1), edge(does, 1)];
  return { middle: (low + high) / 2, half: (high - low) / 2 };
}

/** The last share of the half angle that falls, on one side. */
function edge(does: (share: number) => boolean, side: number): number {
  let good = 0;
  while (good < MOST_SHARE && does(side * (good + STEP_SHARE))) good += STEP_SHARE;
  let step = STEP_SHARE;
  for (let halving = 0; halving < HALVINGS; halving++) {
    step /= 2;
    if (does(side * (good + step))) good += step;
  }
  return side * good;
}
