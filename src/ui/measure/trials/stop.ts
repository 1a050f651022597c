import { middle, type ScenePart, spotOf } from '../../../diagram/trial-scene';
import { diamondAt } from '../../../units/diamond-count';
import { AT_BREAK_END, ballsApart, gapWords, PLACED, type TrialFace } from './trial-face';

const NEAR_SHARE = 0.55;

export const STOP: TrialFace = {
  label: 'Stop',
  teaches: 'how the cloth takes draw away',
  takes: '2 minutes',
  details: ({ stroke, setup }, unit) => [
    `${gapWords(setup.gapM, unit)} apart`,
    stroke.speedWord ?? '',
  ],
  placeTitle: 'Place the balls',
  place: ({ setup }, { ballRadiusM, lengthUnit }) => {
    const gap = `${gapWords(setup.gapM, lengthUnit)} (${ballsApart(setup.gapM, ballRadiusM)})`;
    return `${AT_BREAK_END} Cue ball in the middle by the first diamonds, another ball ${gap} clear straight before it. Coins on the right rail: B beside that ball, A a ball’s width short of it.`;
  },
  placed: PLACED,
  aimAt: 'Cue level, full at the other ball.',
  watch: 'Let both balls come to rest; if one meets a cushion, step back and play again.',
  shown: () =>
    'The cue ball in the middle by the first diamonds, another ball straight before it; coin B on the right rail beside that ball, coin A a ball’s width nearer.',
  scene: (setting) => stop(setting),
  lens: ({ setup }, { ballRadiusM, lengthUnit }) => ({
    words: `${gapWords(setup.gapM, lengthUnit)} between the balls`,
    gap: ballsApart(setup.gapM, ballRadiusM),
  }),
};

const stop: ScenePart = (setting) => {
  const { shot, ballRadiusM, lengthM, step } = setting;
  const object = spotOf(setting);
  const ghost = middle(object.yM - 2 * ballRadiusM);
  const cue = middle(ghost.yM - shot.setup.gapM);
  const railXM = lengthM / 4;
  const view = { fromYM: 0, toYM: lengthM * NEAR_SHARE };
  const coins = [ghost, object].map(({ yM }) => ({ xM: railXM, yM }));
  const common = { coins, view, countTo: diamondAt(cue.yM, lengthM) };
  if (step === 'cueBallM') {
    const rest = middle(ghost.yM - 0.1 * lengthM);
    return {
      ...common,
      balls: [
        { kind: 'ghost', at: ghost },
        { kind: 'rest', at: rest },
      ],
      reading: { from: ghost, to: rest },
    };
  }
  if (step === 'objectBallM') {
    const rest = middle(object.yM + 0.2 * lengthM);
    return {
      ...common,
      balls: [
        { kind: 'ghost', at: object },
        { kind: 'object', at: rest },
      ],
      reading: { from: object, to: rest },
    };
  }
  return {
    ...common,
    balls: [
      { kind: 'cue', at: cue },
      { kind: 'object', at: object },
    ],
    aim: { from: cue, to: object },
  };
};
