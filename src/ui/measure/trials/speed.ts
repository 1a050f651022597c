import { middle, spotOf } from '../../../diagram/trial-scene';
import { diamondAt } from '../../../units/diamond-count';
import type { TrialFace } from './trial-face';
import { UP_THE_TABLE } from './up-the-table';

export const SPEED: TrialFace = {
  ...UP_THE_TABLE,
  label: 'Speed',
  teaches: 'how hard your own words are',
  takes: '1 minute',
  details: ({ stroke }) => [`your ${stroke.speedWord ?? 'medium'}`],
  aimAt: 'Play straight at the middle diamond of the far rail.',
  watch: 'Count the cushions, and see by which diamond the ball rests.',
  scene: (setting) => {
    const from = spotOf(setting);
    return {
      balls: [{ kind: 'cue', at: from }],
      aim: { from, to: middle(setting.lengthM) },
      countTo: setting.step === 'runM' ? 7 : diamondAt(from.yM, setting.lengthM),
    };
  },
};
