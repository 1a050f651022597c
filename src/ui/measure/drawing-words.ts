import type { SceneStep } from '../../diagram/trial-scene';
import type { TrialName, TrialShot } from '../../engine/fit/trials/trials';
import { directionWord } from '../../units/direction-word';

const FROM_ABOVE = 'The table from above, the break end below.';

/**
 * What the drawing of a trial shows, for whoever cannot see it.
 * @param expected where the ball is drawn to touch the far rail, or null
 */
export function drawingWords(shot: TrialShot, step: SceneStep, expected: string | null): string {
  if (step !== 'set-up') return `${FROM_ABOVE} ${READ_WORDS[step]}`;
  const told = `${FROM_ABOVE} ${setUpWords(shot)}`;
  return expected === null ? told : `${told} It is expected to touch the far rail at ${expected}.`;
}

function setUpWords(shot: TrialShot): string {
  const words: Readonly<Record<TrialName, string>> = {
    line: UP_THE_MIDDLE,
    curve: UP_THE_MIDDLE,
    speed: UP_THE_MIDDLE,
    stop: 'The cue ball in the middle by the first diamonds, another ball straight before it; coin B on the right rail beside that ball, coin A a ball’s width nearer.',
    throw: throwWords(shot),
    coast:
      Math.cos(shot.stroke.headingRad) > 0
        ? 'A ball rolls up the middle over the first diamonds’ line and rests before the far rail.'
        : 'A ball rolls down the middle over the seventh diamonds’ line and rests before the break end.',
    pivot:
      'The cue ball in the middle by the second diamonds; by the fifth, two balls make a gate about the middle line.',
  };
  return words[shot.trial];
}

const UP_THE_MIDDLE =
  'The cue ball in the middle near the break end, the aim straight at the middle diamond of the far rail.';

function throwWords({ setup }: TrialShot): string {
  const from =
    setup.cutRad === 0
      ? 'straight behind it'
      : `behind it and to its ${directionWord(setup.cutRad)}`;
  return `A ball in the middle, towards the far rail, the spare ball’s place touching it on the near side, the cue ball ${from}; the aim through the middle of the spare ball’s place.`;
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
