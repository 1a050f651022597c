import { PLAYER_PRIOR, strokeByRule } from '../../engine/player/player-rule';
import type { StrokeProfile } from '../../engine/room/stroke-profile';

/** Somebody in the middle of all players. */
export const ANYBODY = strokeByRule(PLAYER_PRIOR.directionRad);

/** A step of the logarithm: finer would have readings fitted anew for nothing they tell. */
const STEP = Math.log(1.25);

/**
 * A stroke as the readings of trials take it: by the scatter of its direction alone, in steps, so that
 * one more shot of a player does not have all readings fitted anew.
 */
export function roughStroke({ directionRad }: StrokeProfile): StrokeProfile {
  const steps = Math.round(Math.log(directionRad / PLAYER_PRIOR.directionRad) / STEP);
  return strokeByRule(PLAYER_PRIOR.directionRad * Math.exp(steps * STEP));
}
