import { targetOfStroke } from '../../engine/goal/direct-pot';
import { allowedRad, type Target } from '../../engine/goal/target';
import type { KitSpread } from '../../engine/kit/kit-spread';
import type { RankQuestion } from '../../engine/plan/refine-way';
import type { Option } from '../../engine/plan/solve-option';
import type { AskedShot } from '../../engine/player/shot-line';
import { POCKET_RANGES } from '../../store/record-ranges';
import type { Pocket } from '../../store/records';
import type { Asked } from '../shot-field';

/** What the place Shot is to ask, of an option and what it is an option for. */
export function shotToAsk({ question, scene }: RankQuestion, { stroke }: Option): Asked {
  const { distanceM, cutRad, kit } = question;
  const { side, height, elevationRad, speedMps } = stroke;
  const { headingRad } = scene;
  const target = targetOfStroke(question, question.target, kit, stroke);
  return {
    shot: { distanceM, cutRad, side, height, elevationRad, speedMps, headingRad },
    pocket: pocketOf(target, kit.ballRadiusM),
  };
}

/** A way as a shot by itself: what was asked, with what, and how little of that was known. */
export function shotOfWay(
  { question }: RankQuestion,
  { stroke }: Option,
  spread: KitSpread,
): AskedShot {
  const { distanceM, cutRad, target, kit } = question;
  const { side, height, elevationRad, speedMps } = stroke;
  const reach = target.kind === 'mouth' ? { objectDistanceM: target.distanceM } : {};
  const shot = { distanceM, cutRad, side, height, elevationRad, speedMps, ...reach };
  return { shot, target, kit, spread };
}

/**
 * A target as Shot takes it. A mouth narrower than it takes, which is one seen askew, is told as a
 * wider one farther off that the ball enters in the same directions.
 */
function pocketOf(target: Target, ballRadiusM: number): Pocket {
  const { distanceM, mouthM } = POCKET_RANGES;
  if (target.kind === 'mouth' && target.mouthM >= mouthM.min) {
    return {
      distanceM: Math.max(distanceM.min, target.distanceM),
      mouthM: Math.min(mouthM.max, target.mouthM),
    };
  }
  const awayM = (mouthM.min / 2 - ballRadiusM) / Math.tan(allowedRad(target, ballRadiusM));
  return { distanceM: Math.min(distanceM.max, awayM), mouthM: mouthM.min };
}
