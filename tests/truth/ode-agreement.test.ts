import { readdirSync, readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { agreement, type FamilyAgreement, spreadIn } from './report/agreement';
import { type AimAgreement, aimAgreement } from './report/aim-agreement';
import type { Quantity } from './report/compare-shot';
import { spreadOf } from './report/spread';
import { withReport } from './report/truth-report';

/** Most that the mean, 99 of 100, and all may be apart, in the quantity's unit. */
type Gate = readonly [mean: number, p99: number, max: number];

/** Solver against closed form, where nothing is left out: rounding and the solver's tolerance. */
const ON_THE_BED: Readonly<Record<Quantity, Gate>> = {
  place: [1e-9, 1e-8, 1e-7],
  time: [1e-7, 1e-6, 5e-6],
  direction: [1e-10, 1e-9, 1e-8],
  speed: [1e-8, 1e-7, 5e-7],
  spin: [1e-8, 1e-7, 5e-7],
  objectDirection: [1e-9, 1e-8, 1e-7],
  objectSpeed: [1e-8, 1e-7, 5e-7],
  velocitiesAfter: [1e-8, 1e-7, 5e-7],
  spinsAfter: [1e-8, 1e-7, 5e-7],
  rollsOff: [1e-7, 1e-7, 1e-5],
};

/** With hops, of which the engine leaves the last tenth of a millisecond unflown. */
const IN_PLAY: Readonly<Record<Quantity, Gate>> = {
  place: [1e-4, 2e-3, 5e-3],
  time: [5e-3, 0.1, 0.5],
  direction: [1e-5, 1e-4, 2e-3],
  speed: [5e-4, 5e-3, 0.05],
  spin: [2e-3, 1e-2, 0.05],
  objectDirection: [1e-4, 1e-3, 5e-3],
  objectSpeed: [5e-4, 5e-3, 0.05],
  velocitiesAfter: [5e-4, 5e-3, 0.05],
  spinsAfter: [2e-3, 0.01, 0.05],
  rollsOff: [1e-4, 1e-3, 5e-3],
};

/** Massés at full speed on beds like rubber, cloths that stop a spin in a second, and worse. */
const ANYTHING: Readonly<Record<Quantity, Gate>> = {
  place: [2e-4, 5e-3, 0.01],
  time: [1e-2, 0.1, 1],
  direction: [5e-5, 5e-4, 5e-3],
  speed: [5e-3, 0.02, 0.5],
  spin: [5e-3, 0.02, 0.5],
  objectDirection: [2e-4, 2e-3, 0.01],
  objectSpeed: [5e-3, 0.02, 0.5],
  velocitiesAfter: [5e-3, 0.02, 0.5],
  spinsAfter: [5e-3, 0.02, 0.5],
  rollsOff: [5e-4, 2e-3, 0.02],
};

const GATES = {
  'on the bed all the way': ON_THE_BED,
  'shots of play, level bed': IN_PLAY,
  'shots of play, tilted bed': IN_PLAY,
  'all that is accepted': ANYTHING,
};

describe('the engine and the reference', () => {
  let families: readonly FamilyAgreement[] = [];
  let aims: AimAgreement = { shots: 0, apartDeg: [], overlooked: [], notFound: 0 };
  beforeAll(() => {
    families = agreement();
    aims = aimAgreement();
  }, 120_000);

  const family = (name: string): FamilyAgreement => {
    const found = families.find((one) => one.name === name);
    if (found === undefined) throw new RangeError(`there are no shots called ${name}`);
    return found;
  };

  it('play 4,700 strokes, of which more than 2,400 touch the object ball', () => {
    const total = (counts: readonly number[]) => counts.reduce((sum, count) => sum + count, 0);
    expect(families.map(({ name }) => name)).toEqual(Object.keys(GATES));
    expect(total(families.map(({ shots }) => shots))).toBe(4700);
    expect(total(families.map(({ touches }) => touches))).toBeGreaterThan(2400);
    expect(total(families.map(({ misses }) => misses))).toBeGreaterThan(2000);
  });

  it('never disagree whether a stroke touches the object ball', () => {
    expect(families.flatMap(({ disagreements }) => disagreements)).toEqual([]);
  });

  describe.each(Object.entries(GATES))('%s', (name, gates) => {
    it.each(Object.entries(gates))('agree in %s', (quantity, [mean, p99, max]) => {
      const spread = spreadIn(quantity as Quantity, family(name));
      expect(spread.count).toBeGreaterThan(300);
      expect(spread.mean).toBeLessThanOrEqual(mean);
      expect(spread.p99).toBeLessThanOrEqual(p99);
      expect(spread.max).toBeLessThanOrEqual(max);
    });
  });

  it('find the same aims, one in closed form, one by playing shot after shot', () => {
    expect(aims.shots).toBe(400);
    expect(aims.apartDeg.length).toBeGreaterThan(380);
    expect(aims.overlooked).toEqual([]);
    expect(aims.notFound).toBe(0);
    expect(spreadOf(aims.apartDeg).max).toBeLessThan(1e-4);
  });

  it('would differ by a tenth of a degree if friction followed the slip through an impact', () => {
    const moved = family('shots of play, level bed').rubs.map(({ movedDeg }) => movedDeg);
    expect(spreadOf(moved).mean).toBeGreaterThan(0.05);
    expect(spreadOf(moved).p99).toBeLessThan(1);
  });

  it('are reported in the README as they are: `npm run truth:report` writes it', () => {
    const readme = readFileSync('README.md', 'utf8');
    expect(readme).toBe(withReport(readme, { families, aims }));
  });
});

it('the reference takes nothing from the engine but the shapes of what is asked of it', () => {
  const folder = 'tests/truth/reference';
  const files = readdirSync(folder);
  const imports = files.flatMap((file) => {
    const text = readFileSync(`${folder}/${file}`, 'utf8');
    return [...text.matchAll(/^import [^;]*?from '([^']+)'/gm)].map(([line, from = '']) => {
      return { from, types: line.startsWith('import type') };
    });
  });
  const outside = imports.filter(({ from }) => !from.startsWith('./'));
  expect(files.length).toBeGreaterThan(8);
  expect([...new Set(outside.map(({ from }) => from))].sort()).toEqual([
    '../../../src/engine/direct/shot',
    '../../../src/engine/fit/trials/trial',
    '../../../src/engine/fit/trials/trials',
    '../../../src/engine/kit/kit',
    '../../../src/engine/stroke/stroke',
    'odex',
  ]);
  expect(outside.filter(({ from, types }) => from !== 'odex' && !types)).toEqual([]);
});
