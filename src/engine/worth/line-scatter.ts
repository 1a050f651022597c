import { squirtAngle } from '../impacts/strike';
import type { Kit } from '../kit/kit';
import { asSquirting } from '../room/drawn-stroke';
import type { LikelyStroke, StrokeProfile } from '../room/stroke-profile';

/** How the line of a plain stroke strays in the hands of one who may be the player, one deviation each. */
export interface LineScatter {
  /** Of the cue's direction, rad. */
  readonly directionRad: number;
  /** Of the tip sideways, as a share of R at the contact point, and how far it goes with the direction. */
  readonly tip: number;
  readonly together: number;
  /** Squirt of a little side, rad per R: the cue ball leaves to the other side. */
  readonly squirtRad: number;
  /** Shot after shot: right +, and towards a fuller hit +, rad. */
  readonly aimRad: number;
  readonly fullRad: number;
}

/** Of all who may be the player every so manieth is looked at: they come from best to worst. */
const EVERY = 8;
/** Side as small as a slip of the tip. */
const SLIP = 0.05;

/** Those who may be the player, each as likely; one alone where the player is known. */
export function lineScatters(profile: StrokeProfile, kit: Kit): readonly LineScatter[] {
  const { likely, steady } = profile;
  if (likely === undefined) {
    const { directionRad, tipM } = profile;
    const { aimRad, fullRad } = steady ?? { aimRad: 0, fullRad: 0 };
    return [scatterOf(profile, kit, [directionRad, tipM, 0, aimRad, fullRad, 0, 1])];
  }
  return likely
    .filter((_, at) => at % EVERY === EVERY / 2)
    .map((one) => scatterOf(profile, kit, one));
}

function scatterOf(
  profile: StrokeProfile,
  kit: Kit,
  [directionRad, tipM, , aimRad, fullRad]: LikelyStroke,
): LineScatter {
  const tip = tipM / (kit.ballRadiusM + kit.tipRadiusM);
  const squirtRad = squirtAngle(SLIP, asSquirting(kit, profile).massRatio) / SLIP;
  return { directionRad, tip, together: profile.together, squirtRad, aimRad, fullRad };
}
