import { expect, it } from 'vitest';
import { isBeyondMiscue, MISCUE_LIMIT } from '../../../../src/engine/stroke/miscue-limit';

it('lets a tip strike at the limit in every direction, decimals of it included', () => {
  for (let clock = 0; clock < 360; clock++) {
    const angle = (clock * Math.PI) / 180;
    const [side, height] = [Math.cos(angle), Math.sin(angle)];
    expect(isBeyondMiscue(MISCUE_LIMIT * side, MISCUE_LIMIT * height)).toBe(false);
    expect(isBeyondMiscue(0.501 * side, 0.501 * height)).toBe(true);
  }
  expect(isBeyondMiscue(0.3, -0.4)).toBe(false);
  expect(isBeyondMiscue(-0.4, 0.3)).toBe(false);
  expect(isBeyondMiscue(0, 0)).toBe(false);
});
