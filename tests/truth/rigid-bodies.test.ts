import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it, vi } from 'vitest';
import { spreadOf } from './report/spread';
import { type RigidAgreement, rigidAgreement } from './rigid-bodies/rigid-agreement';
import { RIGID_FAMILIES, type RigidFamilyName } from './rigid-bodies/rigid-games';
import { withRigidReport } from './rigid-bodies/rigid-report';
import { readyRigidBodies } from './rigid-bodies/rigid-table';

/** Most that velocities may be apart, %, and the directions of the balls that were hit, degrees. */
interface Gate {
  readonly velocities: readonly [mean: number, max: number];
  readonly directions: readonly [mean: number, max: number];
  readonly placesMm: readonly [mean: number, max: number];
}

/**
 * Single precision leaves a hundredth of a per cent. A hit is noticed up to a step late, a ball being
 * some tenths of a millimetre too deep by then, hence a hundredth of a degree.
 */
const GATES: Readonly<Record<RigidFamilyName, Gate>> = {
  slides: { velocities: [0.02, 0.1], directions: [1e-3, 1e-3], placesMm: [0.2, 1] },
  swerves: { velocities: [0.01, 0.05], directions: [1e-3, 0.01], placesMm: [0.1, 0.5] },
  impacts: { velocities: [0.1, 0.5], directions: [0.05, 0.2], placesMm: [0.1, 0.5] },
  smooth: { velocities: [0.1, 0.5], directions: [0.1, 0.3], placesMm: [1, 5] },
  hits: { velocities: [0.5, 2], directions: [0.2, 0.5], placesMm: [3, 15] },
};

const names = Object.keys(RIGID_FAMILIES) as RigidFamilyName[];
const found = new Map<RigidFamilyName, RigidAgreement>();

beforeAll(async () => {
  // Its loader warns of how it calls itself.
  const warn = vi.spyOn(console, 'warn').mockImplementation(() => undefined);
  await readyRigidBodies();
  warn.mockRestore();
  for (const name of names) found.set(name, rigidAgreement(name));
});

function agreementOf(name: RigidFamilyName): RigidAgreement {
  const agreement = found.get(name);
  if (agreement === undefined) throw new RangeError(`${name} have not been played`);
  return agreement;
}

function hold(values: readonly number[], [mean, max]: readonly [number, number]): void {
  const spread = spreadOf(values);
  expect(spread.count).toBe(40);
  expect(spread.mean).toBeLessThan(mean);
  expect(spread.max).toBeLessThan(max);
}

// Source: Rapier, rigid bodies of general purpose; what it has no law for is left out of the kit.
describe.each(names)('engine and rigid bodies agree on %s', (name) => {
  it('in velocities', () => {
    hold(agreementOf(name).velocitiesPercent, GATES[name].velocities);
  });

  it('in directions', () => {
    hold(agreementOf(name).directionsDeg, GATES[name].directions);
  });

  it('in places', () => {
    hold(agreementOf(name).placesMm, GATES[name].placesMm);
  });
});

describe('rigid bodies have converged', () => {
  const mean = (name: RigidFamilyName, coarser: number) => {
    const agreement = coarser === 1 ? agreementOf(name) : rigidAgreement(name, coarser);
    return spreadOf(agreement.velocitiesPercent).mean;
  };

  it.each(['slides', 'swerves'] as const)(
    'on %s: to the engine, down to single precision',
    (name) => {
      const [coarse, half] = [mean(name, 4), mean(name, 2)];
      expect(half).toBeLessThan(coarse / 2);
      expect(Math.abs(mean(name, 1) - half)).toBeLessThan(0.01);
    },
  );

  it.each(['impacts', 'smooth'] as const)(
    'on %s: to the engine, in proportion to the step',
    (name) => {
      const [coarse, half, quarter] = [mean(name, 4), mean(name, 2), mean(name, 1)];
      expect(half).toBeLessThan(coarse / 1.4);
      expect(quarter).toBeLessThan(half / 1.4);
    },
  );

  it('on hits with friction: to an answer of their own, a third of a per cent off', () => {
    const [half, quarter] = [mean('hits', 2), mean('hits', 1)];
    expect(Math.abs(half - quarter)).toBeLessThan(0.05);
    expect(quarter).toBeGreaterThan(0.2);
  });
});

it('what they say is reported in the README as it is: `npm run truth:report` writes it', () => {
  const readme = readFileSync('README.md', 'utf8');
  const all = {
    slides: agreementOf('slides'),
    swerves: agreementOf('swerves'),
    impacts: agreementOf('impacts'),
    smooth: agreementOf('smooth'),
    hits: agreementOf('hits'),
  };
  expect(readme).toBe(withRigidReport(readme, all));
});
