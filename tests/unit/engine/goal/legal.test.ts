import { describe, expect, it } from 'vitest';
import { legalOf } from '../../../../src/engine/goal/legal';
import type { BallName } from '../../../../src/engine/lie/position';

const laid = (...names: readonly BallName[]) => names.map((name) => ({ name, xM: 0, yM: 0 }));

describe('what may be hit first, and what may fall', () => {
  it('is any ball where nothing is said', () => {
    expect(legalOf('any', laid('cue', 9, 2))).toEqual({ first: [2, 9], falls: [2, 9] });
  });

  it('is the lowest number first, and then any ball may fall', () => {
    expect(legalOf('lowest', laid(9, 'cue', 2, 5))).toEqual({ first: [2], falls: [2, 5, 9] });
  });

  it('is a group, of which what falls must be', () => {
    const balls = laid('cue', 3, 7, 8, 9, 15);
    expect(legalOf('low', balls)).toEqual({ first: [3, 7], falls: [3, 7] });
    expect(legalOf('high', balls)).toEqual({ first: [9, 15], falls: [9, 15] });
  });

  it('is the eight once the group is gone', () => {
    expect(legalOf('low', laid('cue', 8, 9))).toEqual({ first: [8], falls: [8] });
    expect(legalOf('high', laid('cue', 1, 8))).toEqual({ first: [8], falls: [8] });
    expect(legalOf('low', laid('cue', 9))).toEqual({ first: [], falls: [] });
  });

  it('is the balls picked, of those on the table', () => {
    expect(legalOf([4, 9], laid('cue', 9, 2))).toEqual({ first: [9], falls: [2, 9] });
  });
});
