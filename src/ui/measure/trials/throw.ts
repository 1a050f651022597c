import { middle, type ScenePart, spotOf } from '../../../diagram/trial-scene';
import type { TrialShot } from '../../../engine/fit/trials/trials';
import { diamondAt, ordinal } from '../../../units/diamond-count';
import { directionWord } from '../../../units/direction-word';
import {
  AT_BREAK_END,
  gapWords,
  PLACED,
  placedAt,
  type TrialFace,
  type WordsContext,
} from './trial-face';
import { FAR_SHARE } from './up-the-table';

export const THROW: TrialFace = {
  label: 'Throw',
  teaches: 'how the balls rub as they meet',
  takes: '2 minutes',
  details: ({ stroke, setup }) => [
    setup.cutRad === 0
      ? `straight, ${directionWord(stroke.side)} side`
      : `cut to the ${directionWord(setup.cutRad)}`,
    stroke.speedWord ?? '',
  ],
  placeTitle: 'Place the balls',
  place: (shot, context) => {
    const { cutRad } = shot.setup;
    const object = `The object ball in the middle by the ${ordinal(placedAt(shot, context))} diamonds (the side pocket is the fourth), a spare touching it straight towards you.`;
    const degrees = Math.round((Math.abs(cutRad) * 180) / Math.PI);
    const around =
      cutRad === 0 ? 'straight behind' : `${degrees}° round to the ${directionWord(cutRad)}`;
    return `${AT_BREAK_END} ${object} Cue ball ${spareGapWords(shot, context)}, ${around}. Take the spare away.`;
  },
  placed: PLACED,
  aimAt: 'Aim through the middle of where the spare ball was.',
  watch: 'See where the object ball first touches the far cushion.',
  shown: ({ setup }) => {
    const from =
      setup.cutRad === 0
        ? 'straight behind it'
        : `behind it and to its ${directionWord(setup.cutRad)}`;
    return `A ball in the middle, towards the far rail, the spare ball’s place touching it on the near side, the cue ball ${from}; the aim through the middle of the spare ball’s place.`;
  },
  scene: (setting) => thrown(setting),
  lens: (shot, context) => ({ words: `cue ball ${spareGapWords(shot, context)}` }),
};

/** Balls nearer than this are put down touching. */
const TOUCHING_M = 0.003;

/** How far the cue ball lies from the spare ball that stands for the ghost ball. */
function spareGapWords(
  { setup }: TrialShot,
  { ballRadiusM, lengthUnit }: Pick<WordsContext, 'ballRadiusM' | 'lengthUnit'>,
): string {
  const clearM = setup.gapM - 2 * ballRadiusM;
  return clearM < TOUCHING_M
    ? 'touching the spare'
    : `${gapWords(clearM, lengthUnit)} from the spare`;
}

const thrown: ScenePart = (setting) => {
  const { shot, ballRadiusM, lengthM, step } = setting;
  const object = spotOf(setting);
  const ghost = middle(object.yM - 2 * ballRadiusM);
  const { headingRad } = shot.stroke;
  const cue = {
    xM: ghost.xM - shot.setup.gapM * Math.sin(headingRad),
    yM: ghost.yM - shot.setup.gapM * Math.cos(headingRad),
  };
  if (step === 'objectLandingM') {
    return { hasRule: true, countTo: 0, view: { fromYM: lengthM * FAR_SHARE, toYM: lengthM } };
  }
  return {
    balls: [
      { kind: 'cue', at: cue },
      { kind: 'ghost', at: ghost },
      { kind: 'object', at: object },
    ],
    aim: { from: cue, to: ghost },
    path: { from: object, to: middle(lengthM) },
    countTo: diamondAt(object.yM, lengthM),
  };
};
