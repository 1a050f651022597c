import { LEVEL_RAD } from '../../lie/least-elevation';
import type { MeantStroke, SpeedWord, TrialBed, TrialSetup } from './trial';

/** What a player means by each word, m/s, until it is measured (common practice, no source). */
export const USUAL_SPEEDS: { readonly [W in SpeedWord]: number } = {
  soft: 0.75,
  medium: 1.5,
  firm: 3,
};

/** Just inside the miscue limit. */
export const SIDE = 0.45;
export const BOTH_SIDES = [-1, 1] as const;

/** Struck so high, a ball rolls as it leaves the tip. Source: ω R = v; 2/5 of the radius, exact. */
export const ROLLS_AT_ONCE = 0.4;

export const CENTRE_HIT: MeantStroke = {
  headingRad: 0,
  side: 0,
  height: 0,
  elevationRad: LEVEL_RAD,
  speedMps: USUAL_SPEEDS.medium,
  speedWord: 'medium',
};

/** How hard, in a player's word and as it is usually meant. */
export function spoken(word: SpeedWord) {
  return { speedWord: word, speedMps: USUAL_SPEEDS[word] };
}

/** From a diamond's line to where the ball's centre is when it touches the far cushion. */
export function fromDiamond(diamond: number, { lengthM, ballRadiusM }: TrialBed): TrialSetup {
  return setup(lengthM, { distanceM: (1 - diamond / 8) * lengthM - ballRadiusM });
}

/** A set-up that hangs on nothing but what is given. */
export function setup(bedLengthM: number, given: Partial<TrialSetup>): TrialSetup {
  return { distanceM: 0, gapM: 0, cutRad: 0, bedLengthM, ...given };
}
