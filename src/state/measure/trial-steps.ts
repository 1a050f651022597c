import type { ReadingName, TrialTraits } from '../../engine/fit/trials/trial';
import { TRIAL_TRAITS } from '../../engine/fit/trials/trial-traits';
import type { TrialName } from '../../engine/fit/trials/trials';

/**
 * One screen of a trial.
 * - `place`: put the balls (and, of a raised cue, the butt) where the drawing shows.
 * - `butt`: how high the butt is above the cloth; it tells the elevation.
 * - `taps`: play, and tap twice; what lies between is the time.
 * - `play`: play; nothing to tell but that it is done.
 * - `read`: read something off the table.
 */
export type TrialStep =
  | { readonly name: 'place' | 'butt' | 'play' | 'distance'; readonly kind: StepKind }
  | { readonly name: ReadingName; readonly kind: 'taps' | 'read' };

/** `done` asks for nothing; the others ask for one number. */
export type StepKind = 'done' | 'butt' | 'taps' | 'read';

const PLACE: TrialStep = { name: 'place', kind: 'done' };
const PLAY: TrialStep = { name: 'play', kind: 'done' };
const read = (name: ReadingName): TrialStep => ({ name, kind: 'read' });
const BUTT: TrialStep = { name: 'butt', kind: 'butt' };
const DISTANCE: TrialStep = { name: 'distance', kind: 'read' };
const TIME: TrialStep = { name: 'timeS', kind: 'taps' };

/** What a player does in a trial, in order. */
function stepsOf({
  readings,
  strokes,
  isRaised,
  isRolledByHand,
}: TrialTraits): readonly TrialStep[] {
  const isTimed = readings.some(({ name }) => name === 'timeS');
  // What is tried until it works is played while it is set up.
  const play = strokes > 1 ? [] : [PLAY];
  return [
    PLACE,
    ...(isRaised ? [BUTT] : []),
    ...(isTimed ? [TIME] : play),
    ...readings.filter(({ name }) => name !== 'timeS').map(({ name }) => read(name)),
    ...(isRolledByHand ? [DISTANCE] : []),
  ];
}

export const TRIAL_STEPS = Object.fromEntries(
  Object.entries(TRIAL_TRAITS).map(([name, traits]) => [name, stepsOf(traits)]),
) as { readonly [N in TrialName]: readonly TrialStep[] };
