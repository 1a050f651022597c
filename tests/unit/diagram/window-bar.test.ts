import { describe, expect, it } from 'vitest';
import { layOutWindowBar, shareAlongTrack } from '../../../src/diagram/window-bar';
import type { EndedBy } from '../../../src/engine/room/windows';

const TRACK = { min: 1, max: 5 };
const end = (value: number, endedBy: EndedBy) => ({ value, endedBy });

describe('a window’s bar', () => {
  it('lies on the track as the window lies in the usual range', () => {
    const bar = layOutWindowBar({ low: end(2, 'thin'), high: end(4, 'full') }, TRACK);
    expect(bar.low.at).toBeCloseTo(0.25, 12);
    expect(bar.high.at).toBeCloseTo(0.75, 12);
  });

  it.each<[EndedBy, string]>([
    ['thin', 'wide'],
    ['full', 'wide'],
    ['left', 'wide'],
    ['right', 'wide'],
    ['untouched', 'stopped'],
    ['short', 'stopped'],
    ['miscue', 'stopped'],
    ['range', 'open'],
  ])('ends in another way where %s ends the window: %s', (endedBy, kind) => {
    const bar = layOutWindowBar({ low: end(2, endedBy), high: end(4, endedBy) }, TRACK);
    expect([bar.low.kind, bar.high.kind]).toEqual([kind, kind]);
  });

  it('is open where it runs on beyond the track, whatever ends it there', () => {
    const bar = layOutWindowBar({ low: end(0.2, 'thin'), high: end(9, 'full') }, TRACK);
    expect(bar).toEqual({ low: { at: 0, kind: 'open' }, high: { at: 1, kind: 'open' } });
  });

  it('has its walls at the ends of the track where the window ends just there', () => {
    const bar = layOutWindowBar(
      { low: end(1 - 1e-9, 'miscue'), high: end(5 + 1e-9, 'miscue') },
      TRACK,
    );
    expect(bar).toEqual({ low: { at: 0, kind: 'stopped' }, high: { at: 1, kind: 'stopped' } });
  });

  it('marks the present value within the track', () => {
    expect(shareAlongTrack(2, TRACK)).toBeCloseTo(0.25, 12);
    expect(shareAlongTrack(-3, TRACK)).toBe(0);
    expect(shareAlongTrack(30, TRACK)).toBe(1);
  });
});
