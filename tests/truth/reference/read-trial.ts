import type { Readings, TrialSetup } from '../../../src/engine/fit/trials/trial';
import type { TrialShot } from '../../../src/engine/fit/trials/trials';
import type { Kit } from '../../../src/engine/kit/kit';
import type { Stroke } from '../../../src/engine/stroke/stroke';
import { ballImpact, type ImpactOptions } from './ball-impact';
import type { Body } from './body';
import { followBall, type PathEnd, type PathOptions } from './cue-ball-path';
import { cushionBounce } from './cushion-bounce';
import { objectBallAt } from './play-shot';
import { stretchRunner } from './stretch';
import { tipStrike } from './tip-strike';

/** Close to a hundredth of a millimetre: finer than any table is read. */
const FAIR: PathOptions = { run: stretchRunner(1e-7), restSpeedMps: 1e-4 };
/** A cushion's nose, as the surface of a ball so large that it is straight within 0.1 mm. */
const STRAIGHT_M = 10_000;
/** Impulses of a cushion's nose. */
const INCREMENTS = 4000;

/**
 * What would be read off the table were the trial played so, by the reference's laws; null where
 * nothing would. Only of trials whose readings are positions and times of one stroke.
 *
 * @param kit its bed's slope as seen along the meant line
 * @param following whether friction between balls goes along with the slip
 */
export function readTrial(
  { trial, setup }: TrialShot,
  stroke: Stroke,
  kit: Kit,
  following: boolean,
): Readings | null {
  const impacts = { bits: 24, following };
  switch (trial) {
    case 'line':
    case 'curve': {
      const end = overLine(tipStrike(stroke, stroke.aimRad, kit), kit, 0, setup.distanceM);
      return end && { landingM: end.body.at[0], timeS: end.timeS };
    }
    case 'stop': {
      const impact = impactOf(stroke, kit, setup, impacts);
      return (
        impact && {
          cueBallM: runOf(impact.cueBall, kit),
          objectBallM: runOf(impact.objectBall, kit),
        }
      );
    }
    case 'throw': {
      const impact = impactOf(stroke, kit, setup, impacts);
      const end = impact && overLine(impact.objectBall, kit, setup.cutRad, setup.distanceM);
      if (!impact || !end) return null;
      const [from, to] = [impact.objectBall.at, end.body.at];
      const [sin, cos] = [Math.sin(setup.cutRad), Math.cos(setup.cutRad)];
      return { objectLandingM: (to[0] - from[0]) * cos - (to[1] - from[1]) * sin };
    }
    case 'rebound':
      return rebound(tipStrike(stroke, stroke.aimRad, kit), kit, setup);
    case 'angle': {
      const { cutRad, distanceM, bedLengthM } = setup;
      const asideM = distanceM * Math.cos(cutRad);
      const first = overLine(tipStrike(stroke, stroke.aimRad, kit), kit, cutRad, asideM);
      const off = first && offRail(first.body, kit, cutRad);
      const second = off && overLine(off, kit, cutRad + Math.PI, 2 * asideM);
      if (!second) return null;
      // Up the table is a quarter turn left of a right-hand rail, right of a left-hand one.
      const [x, y] = second.body.at;
      const [sin, cos] = [Math.sin(cutRad), Math.cos(cutRad)];
      const up = cutRad > 0 ? y * sin - x * cos : x * cos - y * sin;
      return { upM: bedLengthM / 8 + up };
    }
    case 'coast':
      return { timeS: coastS(kit, setup.distanceM) };
    default:
      throw new RangeError(`the reference has no reading of ${trial}`);
  }
}

/** Where a ball crosses a line square to a direction, as far from where it starts. */
function overLine(ball: Body, kit: Kit, alongRad: number, distanceM: number): PathEnd | null {
  const centreM = distanceM + STRAIGHT_M;
  const [x, y, z] = ball.at;
  const at = [x + centreM * Math.sin(alongRad), y + centreM * Math.cos(alongRad), z] as const;
  const end = followBall(ball, kit, { at, reachM: STRAIGHT_M }, FAIR);
  return end.touched ? end : null;
}

function impactOf(stroke: Stroke, kit: Kit, { gapM, cutRad }: TrialSetup, impacts: ImpactOptions) {
  const at = objectBallAt({ ...stroke, distanceM: gapM, cutRad }, kit);
  const target = { at, reachM: 2 * kit.ballRadiusM };
  const arrival = followBall(tipStrike(stroke, stroke.aimRad, kit), kit, target, FAIR);
  return arrival.touched ? ballImpact(arrival.body, at, kit, impacts) : null;
}

function runOf(ball: Body, kit: Kit): number {
  return followBall(ball, kit, null, FAIR).body.at[1] - ball.at[1];
}

/** Off a rail that lies square to a way. */
function offRail(ball: Body, kit: Kit, intoRad: number): Body {
  const into = [Math.sin(intoRad), Math.cos(intoRad), 0] as const;
  return cushionBounce(ball, into, kit.cushion, kit, INCREMENTS);
}

/** Up and down the table until it rests. */
function rebound(struck: Body, kit: Kit, { distanceM, bedLengthM }: TrialSetup): Readings | null {
  const acrossM = bedLengthM - 2 * kit.ballRadiusM;
  let [ball, runM, timeS] = [struck, 0, Number.NaN];
  for (let cushions = 0; ; cushions++) {
    const [toM, wayRad] = cushions === 0 ? [distanceM, 0] : [acrossM, cushions * Math.PI];
    const end = overLine(ball, kit, wayRad, toM);
    if (end === null) {
      const restsAt = followBall(ball, kit, null, FAIR).body.at[1];
      return cushions === 0 ? null : { timeS, runM: runM + Math.abs(restsAt - ball.at[1]) };
    }
    if (cushions === 0) ({ timeS } = end);
    runM += toM;
    ball = offRail(end.body, kit, wayRad);
  }
}

/** A ball that rolls to rest slows down evenly: once seen, every other roll is of its shape. */
function coastS(kit: Kit, distanceM: number): number {
  const rolling = {
    at: [0, 0, 0],
    velocity: [0, 1, 0],
    spin: [-1 / kit.ballRadiusM, 0, 0],
  } as const;
  const seen = followBall(rolling, kit, null, FAIR);
  return seen.timeS * Math.sqrt(distanceM / seen.body.at[1]);
}
