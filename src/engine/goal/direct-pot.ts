import type { BallState } from '../ball/ball-state';
import { type Meeting, meet, missOf, Striker } from '../direct/contact';
import { layoutOf } from '../direct/layout';
import type { TwoBalls } from '../direct/shot';
import { solveAim } from '../direct/solve-aim';
import type { Kit } from '../kit/kit';
import { KIT_QUANTITIES, QUANTITIES } from '../kit/kit-spread';
import { type Crossing, lineCrossing } from '../motion/line-crossing';
import { comesToRest } from '../motion/roll';
import { Run } from '../motion/run';
import { isBeyondMiscue } from '../stroke/miscue-limit';
import type { Stroke } from '../stroke/stroke';
import { openingAt } from './opening';
import { allowedRad, type Target } from './target';
import type { Arrival, Lost, Task } from './task';

/** No cushion is met. */
const OFF_THE_CUSHIONS = KIT_QUANTITIES.filter(
  (name) => QUANTITIES[name].numbers[0].key !== 'cushion',
);

/**
 * The task of cutting a ball straight into its target, in closed form.
 *
 * @param ballRadiusM of every kit that it is asked about, m
 */
export function directPot(balls: TwoBalls, target: Target, ballRadiusM: number): Task {
  const layout = layoutOf(balls, ballRadiusM);
  const { cutRad } = balls;
  const striker = new Striker(layout);
  const run = new Run();
  return {
    arrivalAt(kit, stroke) {
      const played = playHeld(stroke, striker, kit);
      return typeof played === 'string' ? played : arrivalOf(played, cutRad, target, kit, run);
    },
    directionAt(kit, stroke) {
      const played = playHeld(stroke, striker, kit);
      if (typeof played === 'string') return played;
      return played.contact === null ? 'untouched' : missOf(played, cutRad);
    },
    aims(kit, stroke) {
      const { side, height, elevationRad, speedMps } = stroke;
      const answer = solveAim({ ...balls, side, height, elevationRad, speedMps }, kit);
      return answer.ok ? [answer.aimRad, ...answer.otherAimsRad] : [];
    },
    quantities: OFF_THE_CUSHIONS,
    allowedRad: allowedRad(target, ballRadiusM),
    thinSide: cutRad === 0 ? 0 : cutRad > 0 ? 1 : -1,
  };
}

/** A kit drawn from little knowledge may be one on which nothing stops: it is no shot at all. */
function playHeld(stroke: Stroke, striker: Striker, kit: Kit): Meeting | 'miscue' | 'short' {
  if (isBeyondMiscue(stroke.side, stroke.height)) return 'miscue';
  return comesToRest(kit) ? striker.meet(stroke, kit) : 'short';
}

function arrivalOf(
  played: Meeting,
  cutRad: number,
  target: Target,
  kit: Kit,
  run: Run,
): Arrival | Lost {
  if (played.contact === null) return 'untouched';
  if (target.kind === 'angle') {
    const miss = missOf(played, cutRad) / target.halfAngleRad;
    return { miss, speedMps: Number.POSITIVE_INFINITY };
  }
  const crossing = mouthCrossing(played.contact.objectBall, cutRad, target.distanceM, kit, run);
  if (crossing === null) return 'short';
  const { rightM, speedMps } = crossing;
  if (target.openings === undefined) {
    return { miss: rightM / (target.mouthM / 2 - kit.ballRadiusM), speedMps };
  }
  const { midM, halfM } = openingAt(target.openings, speedMps);
  return { miss: (rightM - midM) / halfM, speedMps };
}

/** Where and how fast a ball comes through a mouth so far along its target line; null: it does not. */
function mouthCrossing(
  ball: BallState,
  cutRad: number,
  distanceM: number,
  kit: Kit,
  run: Run,
): Crossing | null {
  const mouth = { fromXM: ball.xM, fromYM: ball.yM, alongRad: cutRad, distanceM };
  run.begin(ball, 0, kit);
  return lineCrossing(run, mouth);
}

/** The target as wide as it is to the ball of one stroke, however wide it is to a slower one. */
export function targetOfStroke(balls: TwoBalls, target: Target, kit: Kit, stroke: Stroke): Target {
  if (target.kind === 'angle' || target.openings === undefined) return target;
  const { kind, distanceM, mouthM, openings } = target;
  const { contact } = meet(stroke, layoutOf(balls, kit.ballRadiusM), kit);
  const ball = contact?.objectBall;
  const crossing = ball ? mouthCrossing(ball, balls.cutRad, distanceM, kit, new Run()) : null;
  if (crossing === null) return { kind, distanceM, mouthM };
  const { halfM } = openingAt(openings, crossing.speedMps);
  return { kind, distanceM, mouthM: 2 * (halfM + kit.ballRadiusM) };
}
