import { describe, expect, it } from 'vitest';
import { MOST_TO_GO, shotsToGo } from '../../../../src/engine/fit/shots-to-go';
import { handMadeFit } from './hand-made-fit';

const FIT = handMadeFit({});
const AT = FIT.layout.unknowns.findIndex(({ quantity }) => quantity === 'massRatio');
/** A row that hangs on one unknown alone. */
const hangsOn = (slope: number, at = AT) =>
  FIT.layout.unknowns.map((_, i) => (i === at ? slope : 0));
/** A reading of variance 1 that moves by `slope` with that unknown, and no strays. */
const reading = (slope: number, at = AT) => ({
  perUnknown: [hangsOn(slope, at)],
  perStray: [[0]],
  width: 1,
});

describe('the shots still to do', () => {
  // Of one unknown of variance 1, n readings with slope h leave 1/(1 + n h²).
  it.each([
    [0.5, 0.5],
    [0.5, 0.3],
    [1, 0.4],
    [2, 0.2],
  ])('are as many as straight-line Gaussian readings take, slope %d to %d', (slope, enough) => {
    const expected = Math.ceil((1 / enough ** 2 - 1) / slope ** 2 - 1e-9);
    const wanted = expected <= MOST_TO_GO ? expected : null;
    expect(shotsToGo(hangsOn(1), enough, [reading(slope)], FIT)).toBe(wanted);
  });

  it('are none where the aim is sure enough, and too many to tell where nothing helps', () => {
    expect(shotsToGo(hangsOn(1), 1.01, [], FIT)).toBe(0);
    expect(shotsToGo(hangsOn(1), 0.5, [reading(3, AT + 1)], FIT)).toBeNull();
    expect(shotsToGo(hangsOn(1), 0.5, [], FIT)).toBeNull();
  });

  it('are the fewer the better the shots to choose from', () => {
    const poor = shotsToGo(hangsOn(1), 0.4, [reading(0.7)], FIT);
    const both = shotsToGo(hangsOn(1), 0.4, [reading(0.7), reading(3)], FIT);
    expect(both).toBe(1);
    expect(poor).toBeGreaterThan(1);
  });
});
