import { describe, expect, it } from 'vitest';
import { MOST_TO_GO, wayToGo } from '../../../../src/engine/fit/shots-to-go';
import { handMadeFit } from './hand-made-fit';

const FIT = handMadeFit({});
const AT = FIT.layout.unknowns.findIndex(({ quantity }) => quantity === 'massRatio');
/** A row that hangs on one unknown alone. */
const hangsOn = (slope: number, at = AT) =>
  FIT.layout.unknowns.map((_, i) => (i === at ? slope : 0));
/** A reading of variance 1 that moves by `slope` with that unknown, and no strays. */
const reading = (slope: number, at = AT) => ({
  influence: { perUnknown: [hangsOn(slope, at)], perStray: [[0]], width: 1 },
  strokes: 1,
  isRaised: false,
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
    expect(wayToGo(hangsOn(1), enough, [reading(slope)], FIT).shots).toBe(wanted);
  });

  it('are none where the aim is sure enough, and too many to tell where nothing helps', () => {
    const shots = (enough: number, choice: Parameters<typeof wayToGo>[2]) =>
      wayToGo(hangsOn(1), enough, choice, FIT).shots;
    expect(shots(1.01, [])).toBe(0);
    expect(shots(0.5, [reading(3, AT + 1)])).toBeNull();
    expect(shots(0.5, [])).toBeNull();
  });

  it('are the fewer the better the shots to choose from', () => {
    const poor = wayToGo(hangsOn(1), 0.4, [reading(0.7)], FIT);
    const both = wayToGo(hangsOn(1), 0.4, [reading(0.7), reading(3)], FIT);
    expect(both).toEqual({ shots: 1, first: 1 });
    expect(poor.shots).toBeGreaterThan(1);
  });

  it('begin with one that tells of what the aim hangs on, though another tells more of the rest', () => {
    const choice = [reading(9, AT + 1), reading(1)];
    expect(wayToGo(hangsOn(1), 0.5, choice, FIT)).toEqual({ shots: 3, first: 1 });
    expect(wayToGo(hangsOn(1), 0.5, [reading(9, AT + 1)], FIT)).toMatchObject({ first: -1 });
  });

  it('count every stroke of one that takes several, and come to it where it is worth them', () => {
    const sixfold = (slope: number) => ({ ...reading(slope), strokes: 6 });
    // A slope of 1 takes ln 2 a stroke; one of 3 takes ln 10, or a sixth of it a stroke.
    expect(wayToGo(hangsOn(1), 0.6, [sixfold(3), reading(1)], FIT)).toMatchObject({
      shots: 2,
      first: 1,
    });
    expect(wayToGo(hangsOn(1), 0.6, [sixfold(3)], FIT)).toMatchObject({ shots: 6, first: 0 });
  });

  it('raise the cue only where nothing level takes half as much', () => {
    const raised = (slope: number) => ({ ...reading(slope), isRaised: true });
    // ln (1 + h²): 0.69 level; 1.39 raised at h² = 3 is just its double.
    const first = (slope: number) =>
      wayToGo(hangsOn(1), 0.5, [raised(slope), reading(1)], FIT).first;
    expect(first(Math.sqrt(2.9))).toBe(1);
    expect(first(Math.sqrt(3.1))).toBe(0);
  });
});
