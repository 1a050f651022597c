import { middle, type ScenePart } from '../../../diagram/trial-scene';
import type { TrialShot } from '../../../engine/fit/trials/trials';
import type { TrialFace } from './trial-face';

/** Whether the ball is rolled up the table, away from the break end. */
const isUp = ({ stroke }: TrialShot) => Math.cos(stroke.headingRad) > 0;

export const COAST: TrialFace = {
  label: 'Coast',
  teaches: 'how fast the cloth is, and how the table lies',
  takes: '1 minute',
  details: (shot) => [isUp(shot) ? 'up the table' : 'back down the table'],
  placeTitle: 'Take a ball in your hand',
  place: (shot) =>
    isUp(shot)
      ? 'Stand at the break end. You will roll a ball up the middle by hand, so softly that it stops before the far rail.'
      : 'Go round to the far end. You will roll a ball down the middle by hand, so softly that it stops before the break end.',
  placed: 'I have the ball',
  aimAt: 'Roll it straight.',
  watch: '',
  timed: {
    title: 'Roll it and time it',
    text: (shot) =>
      `Tap as the ball’s centre passes the ${isUp(shot) ? 'first' : 'seventh'} diamonds’ line, and again the moment it rests.`,
    taps: ['as it passes the line', 'as it comes to rest'],
  },
  shown: (shot) =>
    isUp(shot)
      ? 'A ball rolls up the middle over the first diamonds’ line and rests before the far rail.'
      : 'A ball rolls down the middle over the seventh diamonds’ line and rests before the break end.',
  scene: (setting) => rolled(setting),
};

const rolled: ScenePart = ({ shot, lengthM, step }) => {
  const towards = isUp(shot) ? 1 : -1;
  const start = middle(towards > 0 ? lengthM / 8 : (7 / 8) * lengthM);
  const rest = middle(start.yM + towards * shot.setup.distanceM);
  const mark = {
    from: { xM: -lengthM / 4, yM: start.yM },
    to: { xM: lengthM / 4, yM: start.yM },
  };
  const isRead = step === 'distance';
  return {
    balls: [
      { kind: isRead ? 'ghost' : 'cue', at: start },
      { kind: 'rest', at: rest },
    ],
    path: isRead ? null : { from: start, to: rest },
    reading: isRead ? { from: start, to: rest } : null,
    mark,
    countTo: towards > 0 ? 1 : 7,
  };
};
