import { describe, expect, it } from 'vitest';
import {
  ballsSketch,
  clothSketch,
  cueSketch,
  MEASURE_SKETCH,
  PLAYER_SKETCH,
  SKETCH_SIZE,
  type Sketch,
  tableSketch,
} from '../../../src/diagram/kit-sketch';

/** Every place where a stroke of the sketch begins, px. */
const startsOf = (sketch: Sketch) =>
  sketch.flatMap(({ d }) =>
    [...d.matchAll(/M(-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => ({ x: Number(x), y: Number(y) })),
  );
const lineOf = (sketch: Sketch) => sketch.find(({ look }) => look === 'line')?.d ?? '';
const ballX = (sketch: Sketch) =>
  Number(/M(-?[\d.]+)/.exec(sketch.find(({ look }) => look === 'ball')?.d ?? '')?.[1]);

describe('the sketch of a thing', () => {
  it('stays in its box whatever it is a sketch of', () => {
    const all = [
      ...[0, 0.007, 0.1, 2].map(cueSketch),
      ...[0, 0.5, 4.5, 45].map(clothSketch),
      ...[0, 0.07, 0.17].map(ballsSketch),
      ...[0.26, 0.63].flatMap((back) => [tableSketch(0.8, 0.4, back), tableSketch(3.8, 2, back)]),
      MEASURE_SKETCH,
      PLAYER_SKETCH,
    ];
    for (const { x, y } of all.flatMap(startsOf)) {
      expect(x).toBeGreaterThanOrEqual(-1);
      expect(x).toBeLessThanOrEqual(SKETCH_SIZE.width + 1);
      expect(y).toBeGreaterThanOrEqual(-1);
      expect(y).toBeLessThanOrEqual(SKETCH_SIZE.height + 1);
    }
  });

  it('tells cues, cloths and balls apart by how far their lines go', () => {
    expect(lineOf(cueSketch(0.027))).not.toBe(lineOf(cueSketch(0.016)));
    expect(ballX(clothSketch(7))).toBeGreaterThan(ballX(clothSketch(3)));
    expect(lineOf(ballsSketch(0.1))).not.toBe(lineOf(ballsSketch(0.06)));
  });

  it('has a ball roll back from a cushion by the square of its speed', () => {
    const backOf = (share: number) => {
      const [, from, to] =
        /M([\d.]+) [\d.]+H([\d.]+)/.exec(lineOf(tableSketch(2.54, 1.27, share))) ?? [];
      return Number(from) - Number(to);
    };
    expect(backOf(0.6) / backOf(0.3)).toBeCloseTo(4, 0);
  });
});
