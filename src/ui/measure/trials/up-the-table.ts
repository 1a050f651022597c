import { middle, type ScenePart, spotOf } from '../../../diagram/trial-scene';
import { diamondAt, ordinal } from '../../../units/diamond-count';
import { AT_BREAK_END, PLACED, placedAt, type TrialFace } from './trial-face';

/** From here on the bed is drawn while a landing is read: so near that a thumb can set it. */
export const FAR_SHARE = 0.86;

/** Turned instead of shifted, the cue would aim the squirt away. */
export const STRAIGHT_WITH_SIDE =
  'Point the cue through the ball’s centre at the middle diamond of the far rail; then shift it, still parallel, to the tip shown.';

/** What the trials have in common that play a lone ball up the middle. */
export const UP_THE_TABLE = {
  placeTitle: 'Place the cue ball',
  place: (shot, context) =>
    `${AT_BREAK_END} Put the cue ball in the middle, level with the ${ordinal(placedAt(shot, context))} diamonds (sights) of the long rails.`,
  placed: PLACED,
  shown: () =>
    'The cue ball in the middle near the break end, the aim straight at the middle diamond of the far rail.',
} as const satisfies Partial<TrialFace>;

/** A ball that is read where it touches the far cushion. */
export const landing: ScenePart = (setting) => {
  const { lengthM, ballRadiusM, step, expectedM } = setting;
  const from = spotOf(setting);
  const touch = lengthM - ballRadiusM;
  if (step === 'landingM') {
    return {
      aim: { from, to: middle(lengthM) },
      hasRule: true,
      view: { fromYM: lengthM * FAR_SHARE, toYM: lengthM },
    };
  }
  return {
    balls: [{ kind: 'cue', at: from }],
    countTo: diamondAt(from.yM, lengthM),
    aim: { from, to: middle(lengthM) },
    path: expectedM === null ? null : { from, to: { xM: expectedM, yM: touch } },
  };
};

/** A ball whose whole run is counted. */
export const rolledUp: ScenePart = (setting) => {
  const from = spotOf(setting);
  return {
    balls: [{ kind: 'cue', at: from }],
    aim: { from, to: middle(setting.lengthM) },
    countTo: setting.step === 'runM' ? 7 : diamondAt(from.yM, setting.lengthM),
  };
};
