import type { ReadingName, TrialName } from '../../engine/fit/trial-shot';

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
const TIME: TrialStep = { name: 'timeS', kind: 'taps' };

/** What a player does, in order. */
export const TRIAL_STEPS: { readonly [N in TrialName]: readonly TrialStep[] } = {
  line: [PLACE, PLAY, read('landingM')],
  curve: [PLACE, { name: 'butt', kind: 'butt' }, TIME, read('landingM')],
  stop: [PLACE, PLAY, read('cueBallM'), read('objectBallM')],
  throw: [PLACE, PLAY, read('objectLandingM')],
  coast: [PLACE, TIME, { name: 'distance', kind: 'read' }],
  pivot: [PLACE, read('bridgeM')],
  speed: [PLACE, PLAY, read('runM')],
};
