import type { Trial } from '../../engine/fit/trials/trial';
import { TRIALS, type TrialName } from '../../engine/fit/trials/trials';

/** What of a trial a screen hangs on. */
export type TrialTraits = Pick<Trial, 'tells' | 'isRaised' | 'isRolledByHand'>;

export function traitsOf(trial: TrialName): TrialTraits {
  return TRIALS[trial];
}
