import type { TrialTraits } from '../../engine/fit/trials/trial';
import { TRIAL_TRAITS } from '../../engine/fit/trials/trial-traits';
import type { TrialName } from '../../engine/fit/trials/trials';

/** What of a trial a screen hangs on. */
export function traitsOf(trial: TrialName): TrialTraits {
  return TRIAL_TRAITS[trial];
}
