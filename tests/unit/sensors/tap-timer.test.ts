import { describe, expect, it } from 'vitest';
import { IDLE_TIMER, tapped } from '../../../src/sensors/tap-timer';

const timerAfter = (...timesMs: number[]) => timesMs.reduce(tapped, IDLE_TIMER);

describe('a stopwatch worked by taps', () => {
  it('runs from the first tap and stops at the second', () => {
    expect(timerAfter(81_250.5)).toEqual({ kind: 'running', startedMs: 81_250.5 });
    expect(timerAfter(81_250.5, 86_750.5)).toEqual({ kind: 'stopped', seconds: 5.5 });
  });

  it('takes two taps within 150 ms for one', () => {
    expect(timerAfter(1000, 1149)).toEqual({ kind: 'running', startedMs: 1000 });
    expect(timerAfter(1000, 1149, 3000)).toEqual({ kind: 'stopped', seconds: 2 });
    expect(timerAfter(1000, 1150)).toEqual({ kind: 'stopped', seconds: 0.15 });
  });

  it.each([1000, 999, -5, Number.NaN, Number.POSITIVE_INFINITY])(
    'runs on at a tap that cannot have been, at %d ms',
    (timeMs) => {
      expect(timerAfter(1000, timeMs)).toEqual({ kind: 'running', startedMs: 1000 });
    },
  );

  it('does not start at a tap without a time', () => {
    expect(timerAfter(Number.NaN)).toEqual(IDLE_TIMER);
  });

  it('keeps its time whatever is tapped next', () => {
    expect(timerAfter(1000, 3000, 3050, 9000)).toEqual({ kind: 'stopped', seconds: 2 });
  });

  it('begins again from idle', () => {
    const again = [5000, 5400].reduce(tapped, IDLE_TIMER);
    expect(again).toEqual({ kind: 'stopped', seconds: 0.4 });
  });
});
