import type { TrialFace } from './trial-face';
import { rolledUp, UP_THE_TABLE } from './up-the-table';

const AIM =
  'Cue level, straight at the middle diamond of the far rail, the tip four tenths up from the middle: so high the ball rolls from the start.';

export const REBOUND: TrialFace = {
  ...UP_THE_TABLE,
  label: 'Rebound',
  teaches: 'what your cushions give back',
  takes: '2 minutes',
  details: ({ stroke }) => [`your ${stroke.speedWord ?? 'medium'}`],
  aimAt: AIM,
  watch: 'Count the cushions, and mark where the ball rests.',
  timed: {
    title: 'Play it and time it',
    text: () =>
      `${AIM} A friend taps as the tip strikes and as the ball touches the far cushion; alone, film it and type the time. Count the cushions, and see where it rests.`,
    taps: ['as the tip strikes', 'as it touches the cushion'],
  },
  scene: rolledUp,
};
