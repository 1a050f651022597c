import { describe, expect, it } from 'vitest';
import { layOutTable } from '../../../src/diagram/table-map';
import { layOutTestBar, TRACK } from '../../../src/diagram/test-bar';
import { layOutTestShot } from '../../../src/diagram/test-shot-view';
import { inventedLevel, LEVEL_TABLE } from '../state/log/invented-level';

const { shape } = LEVEL_TABLE;
const [SHOT] = inventedLevel(1);
if (SHOT === undefined) throw new Error('there is a shot');

describe.each([
  ['upright', { widthPx: 200, heightPx: 360, textPx: 13 }],
  ['on its side', { widthPx: 360, heightPx: 200, textPx: 13 }],
])('a shot of the level test on a table %s', (_, canvas) => {
  const map = layOutTable(shape, canvas);
  const view = layOutTestShot(SHOT, shape, map);

  it('has each ball where its two diamonds cross, and their counts on the rails', () => {
    if (view === null) throw new Error('it is laid out');
    const counts = view.guides.map(({ counts }) => counts.map(({ count }) => count));
    expect(counts).toEqual([
      [1, 4],
      [3, 6],
    ]);
    const balls = [view.cueBall, view.ball];
    for (const [index, { counts: marks }] of view.guides.entries()) {
      const [across, along] = marks;
      const ball = balls[index];
      if (!across || !along || !ball) throw new Error('there are two of each');
      const [onX, onY] = map.isTurned ? [along, across] : [across, along];
      expect(onX.x).toBeCloseTo(ball.x, 6);
      expect(onY.y).toBeCloseTo(ball.y, 6);
      for (const { x, y } of marks) {
        const { bed, frame } = map;
        const isWithin = (box: typeof bed) =>
          x > box.x && x < box.x + box.width && y > box.y && y < box.y + box.height;
        expect([isWithin(frame), isWithin(bed)]).toEqual([true, false]);
      }
    }
  });

  it('rings the pocket it is played into', () => {
    const far = shape.pockets.find(({ name }) => name === 'far-right')?.drop;
    const at = map.toPoint({ xM: far?.x ?? 0, yM: far?.y ?? 0 });
    expect(view?.ring).toMatchObject({ cx: at.x, cy: at.y });
  });
});

it('lays a test’s line on the same track whatever it told, twice as fine always one step on', () => {
  const at = (value: number) => layOutTestBar({ value, low: value / 2, high: value * 2 });
  expect(layOutTestBar({ value: TRACK.max, low: TRACK.min, high: 1 })).toEqual({
    from: 0,
    at: 1,
    to: 1,
  });
  const [fine, rough] = [at(0.002), at(0.004)];
  expect(rough.at - fine.at).toBeCloseTo(fine.at - fine.from, 9);
  expect(layOutTestBar({ value: 0, low: 0, high: 0 })).toEqual({ from: 0, at: 0, to: 0 });
});
