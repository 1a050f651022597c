import { describe, expect, it } from 'vitest';
import { USUAL_SPEEDS } from '../../../src/engine/fit/trials/set-up';
import type { TrialShot } from '../../../src/engine/fit/trials/trials';
import { shotsToDo, TRIALS } from '../../../src/engine/fit/trials/trials';
import { DEFAULT_KIT, type Kit } from '../../../src/engine/kit/kit';
import { QUANTITIES_OF } from '../../../src/engine/kit/kit-spread';
import { ask, JOB, LINES, type Told } from './fit-lines';

const DEG = 180 / Math.PI;
const BED = { lengthM: 2.54, ballRadiusM: DEFAULT_KIT.ballRadiusM };

/** A request for readings that a kit makes of some shots, each struck exactly as meant. */
function readingsOf(shots: readonly TrialShot[], kit: Kit): object[] {
  return shots.flatMap(({ trial, stroke, setup }, index) => {
    const predicted = TRIALS[trial].predict(kit, { ...stroke, aimRad: 0 }, setup);
    if (predicted === null) return [];
    const names = TRIALS[trial].readings.map(({ name }) => [name, predicted[name]]);
    return [
      {
        id: index,
        trial,
        side: stroke.side,
        height: stroke.height,
        elevationDeg: stroke.elevationRad * DEG,
        headingDeg: stroke.headingRad * DEG,
        speedMps: stroke.speedMps,
        distanceM: setup.distanceM,
        gapM: setup.gapM,
        cutDeg: setup.cutRad * DEG,
        read: Object.fromEntries(names),
      },
    ];
  });
}

const estimate = (answer: { estimates: Told[] }, quantity: string, of = 'mine'): Told => {
  const found = answer.estimates.find((told) => told.quantity === quantity && told.of === of);
  if (found === undefined) throw new Error(`no estimate of ${quantity} of ${of}`);
  return found;
};

describe('the kit that readings tell of', () => {
  const truth = { ...DEFAULT_KIT, massRatio: 32, slideFriction: 0.25, rollFriction: 0.008 };
  const shots = shotsToDo(BED).filter(({ trial }) =>
    ['line', 'curve', 'coast', 'throw'].includes(trial),
  );
  const answer = ask({ readings: readingsOf(shots, truth) });

  it('is the one that they were made with, within what is left open of it', () => {
    expect(answer.ok).toBe(true);
    expect(answer.flags.converged).toBe(true);
    for (const quantity of ['massRatio', 'slideFriction', 'rollFriction'] as const) {
      const { value, sd, sdBefore } = estimate(answer, quantity);
      expect(Math.abs(value - truth[quantity])).toBeLessThan(sd);
      expect(sd).toBeLessThan(sdBefore / 2);
      expect(answer.kit[quantity]).toBeCloseTo(value, 12);
    }
  });

  it('expects what was read, and doubts none of it', () => {
    expect(answer.readings.length).toBeGreaterThan(shots.length);
    for (const { read, expected, sd, residual, goodShare } of answer.readings) {
      expect(residual).toBeCloseTo((read - expected) / sd, 9);
      expect(Math.abs(residual)).toBeLessThan(1);
      expect(goodShare).toBeGreaterThan(0.9);
    }
    expect(answer.flags.doubtful).toEqual([]);
  });

  it('makes the aims surer', () => {
    expect(answer.aimSdDeg.after).toBeLessThan(answer.aimSdDeg.before / 2);
  });

  it('is not led astray by a diamond miscounted, which is named', () => {
    const astray = readingsOf(shots, truth).map((reading, index) =>
      index === 4 ? { ...reading, id: 'miscounted', read: { landingM: 0.4 } } : reading,
    );
    const doubted = ask({ readings: astray });
    expect(doubted.flags.doubtful).toEqual(['miscounted']);
    const { value, sd } = estimate(doubted, 'massRatio');
    expect(Math.abs(value - truth.massRatio)).toBeLessThan(2 * sd);
  });
});

describe('what is told of a quantity', () => {
  it('is in the units in which a request tells it, before as the prior has it', () => {
    const prior = {
      kit: { massRatio: 24, bedSlope: { alongM_per_M: 0.0001 } },
      kitSd: {
        massRatio: 3,
        slideFriction: 0.05,
        ballFriction: 0.4,
        bedSlope: { rightM_per_M: 1e-4 },
      },
    };
    const answer = ask({ readings: [], prior });
    expect(estimate(answer, 'massRatio')).toEqual({
      part: 'cue',
      of: 'mine',
      quantity: 'massRatio',
      value: 24,
      sd: expect.closeTo(3, 9),
      sdBefore: expect.closeTo(3, 9),
    });
    expect(estimate(answer, 'slideFriction').sdBefore).toBeCloseTo(0.05, 9);
    // 0.00995 + 0.108 e^(−1.088 · 1), by hand.
    expect(estimate(answer, 'ballFriction').value).toBeCloseTo(0.04633, 4);
    expect(estimate(answer, 'ballFriction').sdBefore).toBeCloseTo(0.4, 9);
    expect(estimate(answer, 'bedSlopeAlong').value).toBe(0.0001);
    expect(estimate(answer, 'bedSlopeRight').sdBefore).toBeCloseTo(0.0001, 12);
  });

  it('has the player’s speeds in m/s, and the aim’s steady error in degrees', () => {
    const answer = ask({ readings: [] });
    const of = (quantity: string) => estimate(answer, quantity, 'player');
    expect(of('aimBiasDeg')).toMatchObject({ part: 'player', value: 0 });
    expect(of('aimBiasDeg').sdBefore).toBeCloseTo(0.5, 9);
    const { soft, medium, firm } = USUAL_SPEEDS;
    const values = [of('softMps'), of('mediumMps'), of('firmMps')].map(({ value }) => value);
    expect(values).toEqual([soft, medium, firm]);
    expect(of('firmMps').sd).toBeCloseTo(firm / 4, 9);
  });

  it('belongs to the cue it was read with, and what they share to both', () => {
    const [right, left] = LINES;
    const readings = [
      { ...right, kit: { cue: 'stiff' } },
      { ...left, kit: { cue: 'whippy' } },
    ];
    const answer = ask({ ...JOB, readings });
    expect(estimate(answer, 'massRatio', 'stiff').sd).toBeLessThan(8);
    expect(estimate(answer, 'massRatio', 'whippy').sd).toBeLessThan(8);
    expect(answer.estimates.filter(({ part }: Told) => part === 'cloth')).toHaveLength(
      QUANTITIES_OF.cloth.length,
    );
    expect(answer.kit.massRatio).toBe(estimate(answer, 'massRatio', 'whippy').value);
    const asked = ask({ ...JOB, readings, for: { cue: 'stiff' } });
    expect(asked.kit.massRatio).toBe(estimate(answer, 'massRatio', 'stiff').value);
  });

  it('is further off with a steadier stroke, for the readings weigh more', () => {
    const sd = (directionDeg: number) =>
      estimate(ask({ ...JOB, stroke: { directionDeg } }), 'massRatio').sd;
    expect(sd(0.1)).toBeLessThan(sd(1));
  });

  it('names what pulls together: less squirt and more grip take the ball the same way', () => {
    const readings = [-1, 1].map((sign) => ({
      trial: 'curve',
      side: 0.45 * sign,
      height: 0,
      elevationDeg: 20,
      speedMps: 2.5,
      distanceM: 2,
      read: { landingM: 0.15 * sign },
    }));
    const stroke = { directionDeg: 0.05, tipM: 0, elevationDeg: 0, speedShare: 0.01 };
    const { correlations } = ask({ readings, stroke });
    expect(correlations[0]).toMatchObject({ one: 'massRatio', two: 'slideFriction' });
    const [strongest, ...others] = correlations.map(
      (pair: { correlation: number }) => pair.correlation,
    );
    expect(strongest).toBeLessThan(-0.5);
    for (const other of others) {
      expect(Math.abs(other)).toBeLessThanOrEqual(-strongest);
      expect(Math.abs(other)).toBeGreaterThan(0.5);
    }
  });

  it('names what hangs on how the player strays, by its name', () => {
    const { flags } = ask({
      ...JOB,
      readings: [...LINES, ...LINES, ...LINES, ...LINES],
      stroke: { directionDeg: 1 },
    });
    const massRatio = { part: 'cue', of: 'mine', quantity: 'massRatio' };
    expect(flags.advice).toContainEqual({
      kind: 'hangs-on-stroke',
      ...massRatio,
      stray: 'direction',
      sdShare: expect.any(Number),
    });
  });
});
