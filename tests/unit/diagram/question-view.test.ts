import { describe, expect, it } from 'vitest';
import { layOutQuestion } from '../../../src/diagram/question-view';
import { layOutTable } from '../../../src/diagram/table-map';
import { shapeOf } from '../../../src/state/table-in-play';

const BALL_RADIUS_M = 0.028575;

describe.each([
  ['a nine-foot table', { lengthM: 2.54, widthM: 1.27 }],
  ['a snooker table', { lengthM: 3.569, widthM: 1.778 }],
])('the question drawn on %s', (_, size) => {
  const shape = shapeOf(size);
  const map = layOutTable(shape, { widthPx: 320, heightPx: 176, textPx: 0 });
  const view = layOutQuestion(shape, map, BALL_RADIUS_M);
  if (view === null) throw new Error('there is a far right corner');

  it('has the ball in the middle of the table and the cue ball two feet behind it', () => {
    expect(map.toSpot(view.ball)).toEqual({ xM: 0, yM: 0 });
    const { xM, yM } = map.toSpot(view.cueBall);
    expect(Math.hypot(xM, yM)).toBeCloseTo(0.6096, 9);
  });

  it('has cue ball, ball and pocket on one line, the ball between', () => {
    const [cue, mouth] = [map.toSpot(view.cueBall), map.toSpot(view.mouth)];
    expect(cue.xM * mouth.yM - cue.yM * mouth.xM).toBeCloseTo(0, 12);
    expect(cue.xM * mouth.xM + cue.yM * mouth.yM).toBeLessThan(0);
  });

  it('shows balls as large as one can see, if need be larger than they are', () => {
    expect(view.radiusPx).toBeGreaterThanOrEqual(BALL_RADIUS_M * map.pxPerM);
    expect(view.radiusPx).toBeGreaterThanOrEqual(4);
  });
});
