import { predictLanding } from './landing';
import { BOTH_SIDES, CENTRE_HIT, fromDiamond, SIDE, spoken } from './set-up';
import { TAPE, type Trial } from './trial';

/** A level stroke with side: where it touches the far cushion tells the squirt. */
export const LINE = {
  name: 'line',
  readings: [{ name: 'landingM', ...TAPE }],
  predict: predictLanding,
  strokes: 1,
  shots: (bed) =>
    BOTH_SIDES.map((sign) => ({
      stroke: { ...CENTRE_HIT, side: sign * SIDE, ...spoken('firm') },
      setup: fromDiamond(1, bed),
    })),
  hangsOn: ['distanceM'],
  tells: ['cue', 'cloth'],
  beginWith: 0,
} as const satisfies Trial;
