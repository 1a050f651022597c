import { expect, it } from 'vitest';
import { layOutParts } from '../../../src/diagram/parts-bars';

it('lays parts end to end from the middle, so that the last ends at their sum', () => {
  const [squirt, swerve, thrown] = layOutParts([-0.04, 0.02, 0.01]);
  expect(squirt).toEqual({ from: 0.5, to: 0 });
  expect(swerve?.from).toBe(0);
  expect(swerve?.to).toBeCloseTo(0.25, 12);
  expect(thrown?.to).toBeCloseTo(0.5 - 0.01 / 0.04 / 2, 12);
});

it('keeps parts that are all nothing in the middle', () => {
  expect(layOutParts([0, 0])).toEqual([
    { from: 0.5, to: 0.5 },
    { from: 0.5, to: 0.5 },
  ]);
});
