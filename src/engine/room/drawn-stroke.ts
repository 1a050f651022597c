import type { Kit } from '../kit/kit';
import { heldWithin } from '../numerics/range';
import { STROKE_RANGES, type Stroke } from '../stroke/stroke';
import type { StrokeProfile } from './stroke-profile';

/** A standard normal draw for a dimension: speed, sideways tip, height, elevation. */
export type Normal = (dimension: number) => number;

/** A stroke as it came out, all but the cue's direction and what of the tip goes with that. */
export function drawnStroke(
  kit: Kit,
  stroke: Stroke,
  profile: StrokeProfile,
  normal: Normal,
): Stroke {
  const tip = tipShare(kit, profile);
  const apart = Math.sqrt(1 - profile.together * profile.together);
  const speed = stroke.speedMps * (1 + profile.speedShare * normal(0));
  const elevation = stroke.elevationRad + profile.elevationRad * normal(3);
  return {
    aimRad: stroke.aimRad,
    speedMps: heldWithin(STROKE_RANGES.speedMps, speed),
    side: stroke.side + tip * apart * normal(1),
    height: stroke.height + tip * normal(2),
    // A cue cannot go below the cloth: what would is as far above it.
    elevationRad: Math.min(STROKE_RANGES.elevationRad.max, Math.abs(elevation)),
  };
}

/** The cue's direction off by so many standard deviations, the tip going with it. */
export function turnedBy(kit: Kit, stroke: Stroke, profile: StrokeProfile, sds: number): Stroke {
  return {
    ...stroke,
    aimRad: stroke.aimRad + profile.directionRad * sds,
    side: stroke.side + tipShare(kit, profile) * profile.together * sds,
  };
}

/** The tip's scatter as a fraction of R at the contact point, which the dome moves less. */
function tipShare(kit: Kit, profile: StrokeProfile): number {
  return profile.tipM / (kit.ballRadiusM + kit.tipRadiusM);
}
