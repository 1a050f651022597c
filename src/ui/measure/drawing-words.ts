import type { SceneStep } from '../../diagram/trial-scene';
import type { TrialShot } from '../../engine/fit/trials/trials';
import { FACES } from './trials/faces';

const FROM_ABOVE = 'The table from above, the break end below.';

/**
 * What the drawing of a trial shows, for whoever cannot see it.
 * @param expected where the ball is drawn to touch the far rail, or null
 */
export function drawingWords(shot: TrialShot, step: SceneStep, expected: string | null): string {
  if (step !== 'set-up') return `${FROM_ABOVE} ${READ_WORDS[step]}`;
  const told = `${FROM_ABOVE} ${FACES[shot.trial].shown(shot)}`;
  return expected === null ? told : `${told} It is expected to touch the far rail at ${expected}.`;
}

const READ_WORDS: Readonly<Record<Exclude<SceneStep, 'set-up'>, string>> = {
  landingM: 'The far rail, a rule in diamonds along it with its zero at the middle diamond.',
  objectLandingM: 'The far rail, a rule in diamonds along it with its zero at the middle diamond.',
  timeS: '',
  cueBallM: 'A line to measure, from beside coin A to the cue ball at rest.',
  objectBallM: 'A line to measure, from beside coin B to the other ball at rest.',
  bridgeM: 'A line to measure, from the cue ball’s near side back to the bridge hand.',
  runM: 'The diamonds of the long rails numbered from the break end, to be counted.',
  distance: 'A line to measure, from the line of the first tap to the ball at rest.',
};
