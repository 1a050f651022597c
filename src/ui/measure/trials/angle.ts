import { middle, type ScenePart, type TableSpot } from '../../../diagram/trial-scene';
import type { TrialShot } from '../../../engine/fit/trials/trials';
import { diamondAt, ordinal } from '../../../units/diamond-count';
import { directionWord } from '../../../units/direction-word';
import { AT_BREAK_END, PLACED, type TrialFace } from './trial-face';

/** The side of the rail that is played at. */
const railOf = ({ setup }: TrialShot) => directionWord(setup.cutRad);
const otherRailOf = ({ setup }: TrialShot) => directionWord(-setup.cutRad);

export const ANGLE: TrialFace = {
  label: 'Angle',
  teaches: 'how your cushions turn a ball',
  takes: '1 minute',
  details: (shot) => [`off the ${railOf(shot)} rail`, `your ${shot.stroke.speedWord ?? 'medium'}`],
  placeTitle: 'Place the cue ball',
  place: () =>
    `${AT_BREAK_END} Put the cue ball in the middle, level with the first diamonds (sights) of the long rails.`,
  placed: PLACED,
  aimAt:
    'Cue level, tip as high as shown: so the ball rolls. Play at the cushion’s edge beside the second diamond.',
  watch: 'See where the ball then touches the other long rail.',
  shown: (shot) =>
    `The cue ball in the middle by the first diamonds, the aim at the ${railOf(shot)} rail beside its ${ordinal(2)} diamond.`,
  scene: (setting) => off(setting),
};

/** The share of the bed, from the break end, in which the ball arrives. */
const READ_SHARE = 0.82;

const off: ScenePart = ({ shot, lengthM, step }) => {
  const { headingRad } = shot.stroke;
  const from = middle(lengthM / 8);
  const railXM = (Math.sign(headingRad) * lengthM) / 4;
  const upM = Math.abs(railXM / Math.tan(headingRad));
  const at: TableSpot = { xM: railXM, yM: from.yM + upM };
  const back: TableSpot = { xM: -railXM, yM: at.yM + 2 * upM };
  if (step === 'upM') {
    const view = { fromYM: 0, toYM: lengthM * READ_SHARE };
    return { aim: { from, to: at }, path: { from: at, to: back }, countTo: 6, view };
  }
  return {
    balls: [{ kind: 'cue', at: from }],
    aim: { from, to: at },
    countTo: diamondAt(at.yM, lengthM),
  };
};

/** What is read, on whichever rail. */
export function arrivalWords(shot: TrialShot): string {
  return `Where on the ${otherRailOf(shot)} rail its centre was as it touched it, counted from the break end: a third past the fourth diamond is 4.33.`;
}
