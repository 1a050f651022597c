import { TAPE, THUMB, type TrialTraits } from './trial';

/**
 * What every trial asks of whoever does it, apart from the physics that it takes to tell what is
 * read: who keeps readings needs no more.
 */
export const TRIAL_TRAITS = {
  line: {
    readings: [{ name: 'landingM', ...TAPE }],
    strokes: 1,
    tells: ['cue', 'cloth'],
  },
  curve: {
    readings: [
      { name: 'timeS', ...THUMB },
      { name: 'landingM', ...TAPE },
    ],
    strokes: 1,
    tells: ['cue', 'cloth'],
    isRaised: true,
  },
  stop: {
    readings: [
      { name: 'cueBallM', ...TAPE },
      { name: 'objectBallM', ...TAPE },
    ],
    strokes: 1,
    tells: ['cloth', 'balls'],
  },
  throw: {
    readings: [{ name: 'objectLandingM', ...TAPE }],
    strokes: 1,
    tells: ['balls'],
  },
  coast: {
    readings: [{ name: 'timeS', ...THUMB }],
    strokes: 1,
    tells: ['cloth'],
    isRolledByHand: true,
  },
  pivot: {
    readings: [{ name: 'bridgeM', sd: 0.12, isShare: true }],
    strokes: 6,
    tells: ['cue'],
  },
  speed: {
    readings: [{ name: 'runM', sd: 0.06, isShare: true }],
    strokes: 1,
    tells: [],
  },
  rebound: {
    readings: [
      { name: 'timeS', ...THUMB },
      { name: 'runM', ...TAPE },
    ],
    strokes: 1,
    tells: ['table'],
  },
  angle: {
    readings: [{ name: 'upM', ...TAPE }],
    strokes: 1,
    tells: ['table'],
  },
} as const satisfies Readonly<Record<string, TrialTraits>>;
