import { describe, expect, it } from 'vitest';
import type { Step } from '../../../../src/engine/goal/goal';
import { isDoubleKiss, kindOfVia } from '../../../../src/engine/goal/kind-of-via';

const struck = (ball: number): Step => ({ ball, by: 'cue' });
const far = (by: Step['by']): Step => ({ cushion: 'far', by });
const left = (by: Step['by']): Step => ({ cushion: 'left', by });

describe('the kind of a way', () => {
  it('goes by what happens until the ball falls', () => {
    expect(kindOfVia([struck(1)], 1)).toBe('direct');
    expect(kindOfVia([struck(1), far(1)], 1)).toBe('bank');
    expect(kindOfVia([struck(1), far(1), left(1)], 1)).toBe('bank');
    expect(kindOfVia([far('cue'), struck(1)], 1)).toBe('kick');
    expect(kindOfVia([far('cue'), left('cue'), struck(1)], 1)).toBe('kick');
    expect(kindOfVia([struck(1), { ball: 2, by: 1 }], 2)).toBe('combination');
    expect(kindOfVia([struck(1), struck(2)], 2)).toBe('carom');
    expect(kindOfVia([struck(1), { ball: 2, by: 1 }], 1)).toBe('carom');
  });

  it('is a bank where cue ball and ball meet once more by the rail', () => {
    const twice = [struck(1), far(1), struck(1)];
    expect(kindOfVia(twice, 1)).toBe('bank');
    expect(isDoubleKiss(twice)).toBe(true);
    expect(isDoubleKiss([struck(1), far(1), left(1)])).toBe(false);
  });

  it('is none where more happens than a player would call by one name', () => {
    expect(kindOfVia([], 1)).toBeNull();
    expect(kindOfVia([far('cue')], 1)).toBeNull();
    expect(kindOfVia([struck(2)], 1)).toBeNull();
    expect(kindOfVia([struck(1), struck(1)], 1)).toBeNull();
    expect(kindOfVia([struck(1), far(1), left(1), far(1)], 1)).toBeNull();
    expect(kindOfVia([far('cue'), left('cue'), far('cue'), struck(1)], 1)).toBeNull();
    expect(kindOfVia([far('cue'), struck(1), left(1)], 1)).toBeNull();
    expect(kindOfVia([struck(1), { ball: 2, by: 1 }, { ball: 3, by: 2 }], 3)).toBeNull();
    expect(kindOfVia([struck(1), far(1), struck(1), struck(1)], 1)).toBeNull();
  });
});
