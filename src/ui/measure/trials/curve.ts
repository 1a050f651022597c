import { DEGREES, degreesOf } from '../../../units/angle-degrees';
import { formatQuantity } from '../../../units/format-number';
import { sided, type TrialFace } from './trial-face';
import { landing, STRAIGHT_WITH_SIDE, UP_THE_TABLE } from './up-the-table';

export const CURVE: TrialFace = {
  ...UP_THE_TABLE,
  label: 'Curve',
  teaches: 'how the cloth bends a raised cue’s shot',
  takes: '2 minutes',
  details: (shot, unit) => [
    ...sided(shot, unit),
    `butt up ${formatQuantity(degreesOf(shot.stroke.elevationRad), DEGREES)}`,
  ],
  aimAt: STRAIGHT_WITH_SIDE,
  watch: 'See where the ball first touches the far cushion.',
  timed: {
    title: 'Play it and time it',
    text: () =>
      `${STRAIGHT_WITH_SIDE} A friend taps as the tip strikes and as the ball touches the far cushion; alone, film it and type the time. See where.`,
    taps: ['as the tip strikes', 'as it touches the cushion'],
  },
  scene: landing,
};
