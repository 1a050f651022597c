import type { TrialFace } from './trial-face';
import { rolledUp, UP_THE_TABLE } from './up-the-table';

export const SPEED: TrialFace = {
  ...UP_THE_TABLE,
  label: 'Speed',
  teaches: 'how hard your own words are',
  takes: '1 minute',
  details: ({ stroke }) => [`your ${stroke.speedWord ?? 'medium'}`],
  aimAt: 'Play straight at the middle diamond of the far rail.',
  watch: 'Count the cushions, and see by which diamond the ball rests.',
  scene: rolledUp,
};
