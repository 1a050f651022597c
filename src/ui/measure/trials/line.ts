import type { TrialFace } from './trial-face';
import { sided } from './trial-face';
import { landing, STRAIGHT_WITH_SIDE, UP_THE_TABLE } from './up-the-table';

export const LINE: TrialFace = {
  ...UP_THE_TABLE,
  label: 'Line',
  teaches: 'how far your cue throws the ball off line',
  takes: '1 minute',
  details: sided,
  aimAt: STRAIGHT_WITH_SIDE,
  watch: 'See where the ball first touches the far cushion.',
  scene: landing,
};
