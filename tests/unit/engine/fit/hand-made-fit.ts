import type { Fit, FittedShot } from '../../../../src/engine/fit/fit-kit';
import { layOut } from '../../../../src/engine/fit/fit-layout';
import type { FitQuantity, FitShot, KitPrior } from '../../../../src/engine/fit/fit-question';
import type { Readings } from '../../../../src/engine/fit/trials/trial';
import type { TrialShot } from '../../../../src/engine/fit/trials/trials';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';
import { UNMEASURED } from '../../../../src/engine/kit/kit-spread';
import { setup, stroke } from './trial-cases';

/** An ordinary kit, little known. */
export const PRIOR: KitPrior = {
  parts: { cue: 'mine', cloth: 'hall', balls: 'clean', table: 'by the door' },
  kit: DEFAULT_KIT,
  spread: UNMEASURED,
};

/** What a fit of one kit found, by quantity, in prior standard deviations. */
export interface Found {
  readonly unknowns?: Partial<Record<FitQuantity, number>>;
  readonly variances?: Partial<Record<FitQuantity, number>>;
  /** Of two quantities. */
  readonly covariances?: readonly (readonly [FitQuantity, FitQuantity, number])[];
  readonly stretch?: number;
  readonly shots?: readonly FittedShot[];
}

/** A fit in which everything is as it was before, but for what is given. */
export function handMadeFit(found: Found): Fit {
  const layout = layOut([], [PRIOR.parts]);
  const names = layout.unknowns.map(({ quantity }) => quantity);
  const covariance = names.map((one) =>
    names.map((two) => (one === two ? (found.variances?.[one] ?? 1) : 0)),
  );
  for (const [one, two, value] of found.covariances ?? []) {
    for (const [i, j] of [
      [one, two],
      [two, one],
    ] as const) {
      const row = covariance[names.indexOf(i)];
      if (row !== undefined) row[names.indexOf(j)] = value;
    }
  }
  return {
    layout,
    unknowns: names.map((name) => found.unknowns?.[name] ?? 0),
    covariance,
    converged: true,
    rounds: 1,
    stretch: found.stretch ?? 1,
    shots: found.shots ?? [],
  };
}

/** A level shot of the line trial with side 0.3 over 1 m, but for what is given. */
export function lineShot(given: Partial<TrialShot>, readings: Readings): FitShot {
  const { aimRad, ...meant } = stroke({ side: 0.3 });
  return {
    id: 'a',
    shot: {
      trial: 'line',
      stroke: { ...meant, headingRad: aimRad, speedWord: null },
      setup: setup({ distanceM: 1 }),
      ...given,
    },
    readings,
    prior: PRIOR,
    scatter: { directionRad: 0.007, tipM: 0.001, elevationRad: 0.01, speedShare: 0.08 },
  };
}
