import { headingAt } from '../goal/last-leg';
import { bearing, wrapped } from '../numerics/angle';
import type { PocketShape } from '../table/pocket-shape';
import type { Sample, SampleLeg } from './sample';
import { pocketsOf, type WaysAsked } from './ways-question';

/** Two neighbouring looks between which a ball turns past the middle of a pocket. */
export interface Bracket {
  readonly leg: SampleLeg;
  readonly pocket: PocketShape;
  /** Headings of the cue, and how far right of the pocket the ball heads there, rad. */
  readonly lowRad: number;
  readonly lowOffRad: number;
  readonly highRad: number;
  readonly highOffRad: number;
}

/** A ball that heads farther off than this, rad, is not on its way to that pocket. */
const FARTHEST_RAD = 1.3;
/** Between two looks it does not turn farther, or it turned the other way round. */
const MOST_TURN_RAD = 1.8;

/** Where, between two looks with the same things happening, a ball turns past a pocket. */
export function bracketsIn(asked: WaysAsked, samples: readonly Sample[]): readonly Bracket[] {
  const pockets = pocketsOf(asked.question);
  return samples.slice(1).flatMap((high, at) => {
    const low = samples[at];
    if (low === undefined) return [];
    return [...low.legs.values()].flatMap((leg) => {
      const there = high.legs.get(leg.key);
      if (there === undefined) return [];
      return pockets.flatMap((pocket) => bracketAt(asked, low, leg, high, there, pocket) ?? []);
    });
  });
}

/** By so much at most does the middle of what is open differ from that of the mouth, rad. */
const ASKEW_RAD = 0.35;

/** Whether a ball plainly stays on one side of a pocket: most do, and this is told at little cost. */
function isElsewhere(leg: SampleLeg, there: SampleLeg, { mouth }: PocketShape): boolean {
  const [one, other] = [leg, there].map(({ state: { xM, yM, vx, vy } }) =>
    wrapped(bearing(vx, vy) - bearing(mouth.x - xM, mouth.y - yM)),
  );
  if (one === undefined || other === undefined) return true;
  const isOneSided = one > 0 === other > 0 && Math.min(Math.abs(one), Math.abs(other)) > ASKEW_RAD;
  return isOneSided || Math.abs(one - other) > MOST_TURN_RAD + ASKEW_RAD;
}

function bracketAt(
  { question }: WaysAsked,
  low: Sample,
  leg: SampleLeg,
  high: Sample,
  there: SampleLeg,
  pocket: PocketShape,
): Bracket | null {
  const { shape, kit } = question;
  if (isElsewhere(leg, there, pocket)) return null;
  const offAt = ({ state }: SampleLeg) => headingAt(state, pocket, shape, kit)?.offRad;
  const [lowOffRad, highOffRad] = [offAt(leg), offAt(there)];
  if (lowOffRad === undefined || highOffRad === undefined) return null;
  if (lowOffRad > 0 === highOffRad > 0) return null;
  if (Math.max(Math.abs(lowOffRad), Math.abs(highOffRad)) > FARTHEST_RAD) return null;
  if (Math.abs(lowOffRad - highOffRad) > MOST_TURN_RAD) return null;
  const { headingRad: lowRad } = low;
  return { leg, pocket, lowRad, lowOffRad, highRad: high.headingRad, highOffRad };
}
