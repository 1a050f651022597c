import type { TrialFace } from './trial-face';
import { rolledUp, UP_THE_TABLE } from './up-the-table';

const AIM = 'Cue level, tip as high as shown: so the ball rolls. Straight at the middle diamond.';

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
      'Tip as high as shown, straight at the middle diamond. A friend taps as it strikes and as the far cushion is touched; alone, film it. See where it rests.',
    taps: ['as the tip strikes', 'as it touches the cushion'],
  },
  scene: rolledUp,
};
