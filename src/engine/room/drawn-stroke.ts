import type { Task } from '../goal/task';
import type { Kit } from '../kit/kit';
import { KIT_NUMBERS } from '../kit/kit-numbers';
import { heldWithin } from '../numerics/range';
import { STROKE_RANGES, type Stroke } from '../stroke/stroke';
import type { LikelyStroke, StrokeProfile } from './stroke-profile';

/** A standard normal draw for a dimension: speed, sideways tip, height, elevation. */
export type Normal = (dimension: number) => number;

/** A player with a stroke and a kit, all that is off shot after shot being in them already. */
export interface InPlay {
  /** What comes of the meant stroke in the middle. */
  readonly stroke: Stroke;
  /** How it scatters about that. */
  readonly profile: StrokeProfile;
  readonly kit: Kit;
}

/**
 * What a player makes of a meant stroke.
 *
 * @param thinSide that of the task: a ball cut to the right is hit fuller by who points further right
 */
export function inPlay<K extends Kit>(
  meant: Stroke,
  profile: StrokeProfile,
  kit: K,
  thinSide: Task['thinSide'],
): InPlay & { readonly kit: K } {
  const { steady } = profile;
  if (steady === undefined) return { stroke: meant, profile, kit };
  const aimRad = meant.aimRad + steady.aimRad + thinSide * steady.fullRad;
  return {
    stroke: { ...atUsualPace(meant, profile), aimRad },
    profile: widened(profile, thinSide),
    kit: asSquirting(kit, profile),
  };
}

/** What is not known of the direction's steady errors is scatter, and brings no tip with it. */
function widened(profile: StrokeProfile, thinSide: Task['thinSide']): StrokeProfile {
  const { steady, directionRad, together } = profile;
  if (steady?.unsure === undefined) return profile;
  const { aimRad, fullRad, correlation } = steady.unsure;
  const full = thinSide * fullRad;
  const square = aimRad * aimRad + 2 * correlation * aimRad * full + full * full;
  const wide = Math.sqrt(directionRad * directionRad + square);
  return { ...profile, directionRad: wide, together: (together * directionRad) / wide };
}

/** One of those who may be the player, in the player's place. */
export function asLikely(player: StrokeProfile, likely: LikelyStroke): StrokeProfile {
  const [directionRad, tipM, speedShare, aimRad, fullRad, speedError, massRatioTimes] = likely;
  const steady = { aimRad, fullRad, speedShare: speedError, massRatioTimes };
  return { ...player, directionRad, tipM, speedShare, steady };
}

const MASS_RATIO = KIT_NUMBERS.massRatio.range;

/** A kit whose cue squirts as the player's shots with side say that it does. */
export function asSquirting<K extends Kit>(kit: K, { steady }: Pick<StrokeProfile, 'steady'>): K {
  const times = steady?.massRatioTimes;
  return times === undefined
    ? kit
    : { ...kit, massRatio: heldWithin(MASS_RATIO, kit.massRatio * times) };
}

/** A meant stroke as hard as the player who means it plays it in the middle. */
export function atUsualPace(meant: Stroke, { steady }: Pick<StrokeProfile, 'steady'>): Stroke {
  if (steady === undefined) return meant;
  const speed = meant.speedMps * (1 + steady.speedShare);
  return { ...meant, speedMps: heldWithin(STROKE_RANGES.speedMps, speed) };
}

/**
 * A stroke as it came out, all but the cue's direction and what of the tip goes with that.
 *
 * @param stroke what {@link inPlay} makes of a meant one; and so the kit and the profile
 */
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
