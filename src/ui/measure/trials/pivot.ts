import { middle, type ScenePart } from '../../../diagram/trial-scene';
import { tipWords } from '../tip-words';
import { sided, type TrialFace } from './trial-face';

/** Half the way through the gate, in radii: just wider than a ball. */
const GATE_RADII = 2.25;

export const PIVOT: TrialFace = {
  label: 'Pivot',
  teaches: 'your cue’s squirt, by feel alone',
  takes: '5 minutes',
  details: sided,
  placeTitle: 'Build a gate and try it',
  place: (shot) =>
    `Cue ball in the middle by the second diamonds; by the fifth (side pocket: fourth), two balls make a gate just wider than a ball. Aim through it without side, swing the cue about your bridge to the ${tipWords(shot.stroke)}, and play. Off to the tip’s side: lengthen the bridge; else shorten.`,
  placed: 'It goes through',
  aimAt: 'Aim through the gate.',
  watch: '',
  shown: () =>
    'The cue ball in the middle by the second diamonds; by the fifth, two balls make a gate about the middle line.',
  scene: (setting) => pivoted(setting),
};

const pivoted: ScenePart = ({ shot, ballRadiusM, lengthM, step }) => {
  const cue = middle(lengthM / 4);
  const gateYM = cue.yM + shot.setup.distanceM;
  const handYM = cue.yM - 0.11 * lengthM;
  return {
    balls: [
      { kind: 'cue', at: cue },
      { kind: 'object', at: { xM: -GATE_RADII * ballRadiusM, yM: gateYM } },
      { kind: 'object', at: { xM: GATE_RADII * ballRadiusM, yM: gateYM } },
    ],
    aim: { from: cue, to: middle(gateYM) },
    reading: step === 'bridgeM' ? { from: middle(cue.yM - ballRadiusM), to: middle(handYM) } : null,
    countTo: 5,
    view: { fromYM: 0, toYM: lengthM * 0.75 },
  };
};
