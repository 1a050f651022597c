import { describe, expect, it } from 'vitest';
import { fitKit } from '../../../../src/engine/fit/fit-kit';
import type { FitShot } from '../../../../src/engine/fit/fit-question';
import { kitKnowledge } from '../../../../src/engine/fit/kit-knowledge';
import type { TrialName } from '../../../../src/engine/fit/trials/trials';
import { TRIALS } from '../../../../src/engine/fit/trials/trials';
import type { Kit } from '../../../../src/engine/kit/kit';
import { slopeSeenAlong } from '../../../../src/engine/kit/kit-along';
import { KIT_QUANTITIES } from '../../../../src/engine/kit/kit-spread';
import { HONEST, MIDDLE, READABLE } from '../../../harness/trial-player';

/** Exact readings on a kit of a stroke exactly as meant. */
function readOn(kit: Kit, trial: TrialName, times = 1): FitShot[] {
  return READABLE.filter((shot) => shot.trial === trial).flatMap((shot, index) => {
    const { headingRad, ...meant } = shot.stroke;
    const seen = { ...kit, bedSlope: slopeSeenAlong(kit.bedSlope, headingRad) };
    const readings = TRIALS[trial].predict(seen, { aimRad: 0, ...meant }, shot.setup);
    return readings === null
      ? []
      : Array.from({ length: times }, (_, time) => ({
          id: `${trial} ${index} ${time}`,
          shot,
          readings,
          prior: MIDDLE,
          scatter: HONEST,
        }));
  });
}

const OTHER: Kit = {
  ...MIDDLE.kit,
  massRatio: 16,
  slideFriction: 0.2,
  rollFriction: 0.012,
  bedSlope: { alongM_per_M: 0.0003, rightM_per_M: 0 },
};

describe('fitKit', () => {
  it('knows no more than before where nothing was read', () => {
    const fit = fitKit([], [MIDDLE.parts]);
    expect(fit.converged).toBe(true);
    const { kit, spread, correlation } = kitKnowledge(fit, MIDDLE);
    expect(kit).toEqual(MIDDLE.kit);
    for (const quantity of KIT_QUANTITIES) {
      expect(spread[quantity]).toBeCloseTo(MIDDLE.spread[quantity], 12);
    }
    expect(correlation.every((row, i) => row.every((value, j) => value === Number(i === j)))).toBe(
      true,
    );
  });

  it('tells roll friction and slope from a ball that rolls to rest up and down the table', () => {
    const { kit, spread } = kitKnowledge(fitKit(readOn(OTHER, 'coast', 8)), MIDDLE);
    // Sixteen times read to 0.15 s of about 5.2 s, and friction goes by the square: about 1.5 %.
    expect(spread.rollFriction).toBeLessThan(0.02);
    expect(Math.abs(Math.log(kit.rollFriction / 0.012))).toBeLessThan(0.01);
    // The slopes of two balls apart by 2·0.0003·(5/7) in 0.012: the prior of 0.0002 pulls.
    expect(kit.bedSlope.alongM_per_M).toBeGreaterThan(0.0001);
    expect(kit.bedSlope.alongM_per_M).toBeLessThan(0.0003);
  });

  it('comes to the kit the readings were made on, the more of them the closer', () => {
    const [few, many] = [1, 8].map((times) => {
      const shots = (['line', 'curve', 'coast'] as const).flatMap((trial) =>
        readOn(OTHER, trial, times),
      );
      const fit = fitKit(shots);
      expect(fit.converged).toBe(true);
      return kitKnowledge(fit, MIDDLE);
    });
    for (const quantity of ['massRatio', 'slideFriction', 'rollFriction'] as const) {
      const error = Math.log((many?.kit[quantity] ?? 0) / OTHER[quantity]);
      expect(Math.abs(error)).toBeLessThan(2 * (many?.spread[quantity] ?? 0));
      expect(many?.spread[quantity]).toBeLessThan(0.7 * (few?.spread[quantity] ?? 0));
    }
  });

  it('does not care in which order the shots were played', () => {
    const shots = [...readOn(OTHER, 'line'), ...readOn(OTHER, 'curve'), ...readOn(OTHER, 'stop')];
    const [one, two] = [shots, [...shots].reverse()].map(
      (order) => kitKnowledge(fitKit(order), MIDDLE).kit,
    );
    expect(one?.massRatio).toBeCloseTo(two?.massRatio ?? 0, 1);
    expect(one?.slideFriction).toBeCloseTo(two?.slideFriction ?? 0, 3);
  });

  it('flags a shot gone astray and hardly moves for it', () => {
    const shots = readOn(OTHER, 'line', 6);
    const honest = kitKnowledge(fitKit(shots), MIDDLE);
    const astray = shots.map((shot, index) =>
      index === 5 ? { ...shot, readings: { landingM: (shot.readings.landingM ?? 0) + 0.3 } } : shot,
    );
    const fit = fitKit(astray);
    expect(fit.shots.map(({ verdict }) => verdict.goodShare < 0.5)).toEqual(
      shots.map((_, index) => index === 5),
    );
    const moved = Math.log(kitKnowledge(fit, MIDDLE).kit.massRatio / honest.kit.massRatio);
    expect(Math.abs(moved)).toBeLessThan(honest.spread.massRatio);
  });

  it('takes a steady error of the aim for what it is, left and right read together', () => {
    const shots = readOn(OTHER, 'line', 6).map((shot) => ({
      ...shot,
      // Half a degree to the right, over the whole way to the cushion.
      readings: {
        landingM: (shot.readings.landingM ?? 0) + shot.shot.setup.distanceM * Math.tan(0.0087),
      },
    }));
    const fit = fitKit(shots);
    const place = fit.layout.unknowns.findIndex(({ quantity }) => quantity === 'aimBias');
    // In its prior's deviations, of half a degree each.
    expect(fit.unknowns[place]).toBeGreaterThan(0.7);
    const { kit } = kitKnowledge(fit, MIDDLE);
    const [straight] = [kitKnowledge(fitKit(readOn(OTHER, 'line', 6)), MIDDLE).kit];
    expect(Math.log(kit.massRatio / straight.massRatio)).toBeCloseTo(0, 1);
  });

  it('believes less where shots stray further than was assumed', () => {
    const wild = (sign: number) =>
      readOn(OTHER, 'line', 8).map((shot, index) => ({
        ...shot,
        readings: {
          landingM: (shot.readings.landingM ?? 0) + sign * (index % 4 < 2 ? 0.03 : -0.03),
        },
      }));
    const fit = fitKit(wild(1));
    expect(fit.stretch).toBeGreaterThan(1);
    expect(kitKnowledge(fit, MIDDLE).spread.massRatio).toBeGreaterThan(
      kitKnowledge(fitKit(readOn(OTHER, 'line', 8)), MIDDLE).spread.massRatio,
    );
  });

  it('weighs a bed on which nothing would stop as one that cannot be', () => {
    const kit = { ...MIDDLE.kit, rollFriction: 0.005 };
    const spread = { ...MIDDLE.spread, bedSlopeAlong: 0.006, bedSlopeRight: 0.006 };
    const shots = readOn(kit, 'curve').map((shot) => ({
      ...shot,
      prior: { ...MIDDLE, kit, spread },
    }));
    const fit = fitKit(shots);
    expect(fit.unknowns.every(Number.isFinite)).toBe(true);
  });

  it('learns a cue on two cloths and both cloths with it', () => {
    const onThe = (cloth: string, kit: Kit) =>
      [...readOn(kit, 'curve', 3), ...readOn(kit, 'line', 3)].map((shot) => ({
        ...shot,
        id: `${cloth} ${shot.id}`,
        prior: { ...MIDDLE, parts: { ...MIDDLE.parts, cloth } },
      }));
    const slow = { ...OTHER, slideFriction: 0.3 };
    const fit = fitKit([...onThe('fast', OTHER), ...onThe('slow', slow)]);
    const of = (cloth: string) =>
      kitKnowledge(fit, { ...MIDDLE, parts: { ...MIDDLE.parts, cloth } });
    expect(of('fast').kit.massRatio).toBe(of('slow').kit.massRatio);
    expect(of('slow').kit.slideFriction / of('fast').kit.slideFriction).toBeGreaterThan(1.25);
  });
});
