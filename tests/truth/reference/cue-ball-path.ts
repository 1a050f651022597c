import type { Kit } from '../../../src/engine/kit/kit';
import { bedBounce } from './bed-bounce';
import { type Body, GRAVITY } from './body';
import {
  type Coordinates,
  inFlight,
  slipOf,
  toBody,
  toCoordinates,
  whileRolling,
  whileSliding,
} from './forces';
import type { RunStretch, Stretch, Target } from './stretch';

/** How finely the path is worked out. */
export interface PathOptions {
  readonly run: RunStretch;
  /** Rebounds off the bed slower than this are not flown, m/s. */
  readonly restSpeedMps: number;
}

export type Motion = 'flying' | 'sliding' | 'rolling' | 'resting';

/** Where a path ends: at the target, at rest, or where the caller had enough. */
export interface PathEnd {
  readonly body: Body;
  readonly timeS: number;
  readonly touched: boolean;
  /** Motion in which it ended. */
  readonly motion: Motion;
  readonly hops: number;
  readonly stretches: number;
}

/** A slip or a rolling speed below this has stopped, m/s. */
const STOPPED_MPS = 1e-8;
/** Sidespin below this has died, rad/s. */
const SPUN_OUT_RADS = 1e-9;
const MOST_STRETCHES = 5000;

/**
 * Follows a ball over the bed from just after a blow (of the tip or another ball; the bed answers
 * first) until it touches the target, rests, or reaches `until`.
 */
export function followBall(
  start: Body,
  kit: Kit,
  target: Target | null,
  options: PathOptions,
  until: Motion = 'resting',
): PathEnd {
  let ball = toCoordinates(bedBounce(start, kit, options.restSpeedMps));
  let timeS = 0;
  let hops = 0;
  let motion: Motion = 'flying';
  for (let stretches = 0; stretches < MOST_STRETCHES; stretches++) {
    motion = nextMotion(ball, motion, kit);
    if (motion === 'rolling') ball = gripped(ball, kit);
    if (motion === 'resting' || motion === until) {
      return { body: toBody(ball), timeS, touched: false, motion, hops, stretches };
    }
    const { end, elapsedS, touched } = options.run(nextStretch(ball, motion, kit), target);
    timeS += elapsedS;
    if (touched) return { body: toBody(end), timeS, touched, motion, hops, stretches };
    ball = motion === 'flying' ? landed(end, kit, options) : spunOut(end);
    if (motion === 'flying') hops++;
  }
  throw new Error('the ball goes on and on');
}

/** A ball that rolls goes on rolling: nothing but a blow makes it slip again. */
export function nextMotion(ball: Coordinates, last: Motion, kit: Kit): Motion {
  const [, , z, vx, vy, vz] = ball;
  if (z > 0 || vz > 0) return 'flying';
  const slipMps = Math.hypot(...slipOf(ball, kit.ballRadiusM));
  if (last !== 'rolling' && slipMps > STOPPED_MPS) return 'sliding';
  return Math.hypot(vx, vy) > STOPPED_MPS ? 'rolling' : 'resting';
}

/** What comes next, up to where its law may stop holding, and never beyond. */
export function nextStretch(ball: Coordinates, motion: Motion, kit: Kit): Stretch {
  const { alongM_per_M, rightM_per_M } = kit.bedSlope;
  const downhill = GRAVITY * Math.hypot(alongM_per_M, rightM_per_M);
  const [, , z, vx, vy, vz, , , wz] = ball;
  if (motion === 'flying') {
    const durationS = (vz + Math.sqrt(vz ** 2 + 2 * GRAVITY * z)) / GRAVITY;
    const accelerationMps2 = GRAVITY + downhill;
    return { law: inFlight(kit), start: ball, durationS, accelerationMps2 };
  }
  // No slip or speed is lost faster than this. Short of its end the law is smooth; on a tilted bed
  // the direction turns ever faster towards it.
  const share = downhill > 0 ? 0.8 : 1 - 1e-4;
  const sideS = wz === 0 ? Number.POSITIVE_INFINITY : Math.abs(wz) / kit.spinDecayRadS2;
  if (motion === 'sliding') {
    const [ux, uy] = slipOf(ball, kit.ballRadiusM);
    const friction = kit.slideFriction * GRAVITY;
    const longestS = (share * Math.hypot(ux, uy)) / (3.5 * friction + downhill);
    const durationS = Math.min(longestS, sideS);
    return {
      law: whileSliding(kit),
      start: ball,
      durationS,
      accelerationMps2: friction + downhill,
    };
  }
  const drag = kit.rollFriction * GRAVITY;
  const longestS = (share * Math.hypot(vx, vy)) / (drag + (5 / 7) * downhill);
  const durationS = Math.min(longestS, sideS);
  return { law: whileRolling(kit), start: ball, durationS, accelerationMps2: drag + downhill };
}

export function landed(end: Coordinates, kit: Kit, { restSpeedMps }: PathOptions): Coordinates {
  const { at, velocity, spin } = toBody(end);
  return toCoordinates(bedBounce({ at: [at[0], at[1], 0], velocity, spin }, kit, restSpeedMps));
}

export function spunOut(ball: Coordinates): Coordinates {
  const [x, y, z, vx, vy, vz, wx, wy, wz] = ball;
  return [x, y, z, vx, vy, vz, wx, wy, Math.abs(wz) < SPUN_OUT_RADS ? 0 : wz];
}

/** The last trace of slip gone as friction would take it: 2/7 of it out of the velocity. */
export function gripped(ball: Coordinates, kit: Kit): Coordinates {
  const [x, y, z, vx, vy, vz, , , wz] = ball;
  const [ux, uy] = slipOf(ball, kit.ballRadiusM);
  const [gx, gy] = [vx - (2 / 7) * ux, vy - (2 / 7) * uy];
  return [x, y, z, gx, gy, vz, -gy / kit.ballRadiusM, gx / kit.ballRadiusM, wz];
}
