import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { nearestOnCushion, newNearest } from '../../src/engine/table/nearest-on-cushion';
import { TABLE_SIZES, WPA_POCKETS } from '../../src/engine/table/pocket-standard';
import { tableShape } from '../../src/engine/table/table-shape';
import { CAMPAIGN_TIMEOUT_MS, campaignSize, tell } from '../harness/campaign-size';
import { between, seededRandom } from '../harness/seeded-random';
import { nearestEdge, tableOutline } from '../truth/reference/table-outline';
import type { TablesCompared } from '../truth/report/compare-tables';
import { spreadOf } from '../truth/report/spread';
import {
  comparedTables,
  type TableAgreement,
  tableAgreement,
} from '../truth/report/table-agreement';
import { TABLE_FAMILIES, type TableFamilyName } from '../truth/report/table-cases';
import { withTableReport } from '../truth/report/table-report';

/** Most that the mean, 99 of 100, and all may be apart, mm. */
type Gate = readonly [mean: number, p99: number, max: number];

/**
 * Up to the first touch all is closed form; on a tilted bed a path that only skims a surface may be
 * seen to touch it 10 nm late. Then the steps of a cushion's impulse show, against the 20,000 of the
 * reference, and each touch after that multiplies what there is by distances over radii. A ball that
 * comes down on a nose from the air meets it on a round, which multiplies likewise.
 */
const TOUCHES: Readonly<Record<TableFamilyName, readonly Gate[]>> = {
  level: [
    [1e-8, 1e-7, 1e-6],
    [0.05, 0.3, 1],
    [0.1, 1, 3],
  ],
  tilted: [
    [1e-4, 1e-2, 0.1],
    [0.05, 0.3, 1],
    [0.1, 1, 3],
  ],
  rails: [
    [1e-8, 1e-7, 1e-6],
    [0.1, 0.5, 2],
    [0.2, 1, 3],
    [0.4, 3, 20],
    [0.4, 3, 20],
    [0.5, 5, 20],
  ],
  chains: [
    [1e-8, 1e-7, 1e-6],
    [1e-3, 0.01, 0.1],
    [0.01, 0.1, 0.5],
    [0.02, 0.3, 1],
  ],
};

/** Where a lone ball rests after none, one, two … cushions; none at all rests after none. */
const RESTS: readonly (Gate | null)[] = [
  null,
  [0.3, 1, 2],
  [0.5, 2, 3],
  [0.5, 2, 3],
  [0.8, 3, 5],
  [1, 10, 20],
  [1, 10, 20],
];

const names = Object.keys(TABLE_FAMILIES) as TableFamilyName[];
const compared = new Map<TableFamilyName, readonly TablesCompared[]>();

beforeAll(() => {
  for (const name of names) {
    const { sample, whole } = TABLE_FAMILIES[name];
    compared.set(name, comparedTables(name, campaignSize(sample, whole)));
  }
}, CAMPAIGN_TIMEOUT_MS);

function agreementIn(name: TableFamilyName, most = Number.POSITIVE_INFINITY): TableAgreement {
  return tableAgreement(name, compared.get(name)?.slice(0, most) ?? []);
}

function hold(what: string, apartMm: readonly number[], [mean, p99, max]: Gate): void {
  const spread = spreadOf(apartMm);
  tell(`${what}: ${spread.count}, mean ${spread.mean}, 99 % ${spread.p99}, max ${spread.max} mm`);
  expect(spread.mean, what).toBeLessThan(mean);
  expect(spread.p99, what).toBeLessThan(p99);
  expect(spread.max, what).toBeLessThan(max);
}

describe.each(names)('a table as the ODE solver and small impulses play it: %s', (name) => {
  it('has the same touches', () => {
    const { parted, strokes } = agreementIn(name);
    expect(strokes).toBeGreaterThanOrEqual(TABLE_FAMILIES[name].sample);
    // Of 500 lone balls one comes down on a nose from the air, and parts there.
    expect(parted.length, parted.join('\n')).toBeLessThanOrEqual(strokes / 400);
  });

  it('has its balls at the same places as they touch, the first time, the second, and so on', () => {
    const { touchesMm } = agreementIn(name);
    expect(touchesMm).toHaveLength(TOUCHES[name].length);
    TOUCHES[name].forEach((gate, at) => {
      hold(`${name}, touch ${at + 1}`, touchesMm[at] ?? [], gate);
    });
  });
});

it('a lone ball rests at the same place, after two cushions, three, and more', () => {
  const { restsMm } = agreementIn('rails');
  expect(restsMm).toHaveLength(RESTS.length);
  RESTS.forEach((gate, touches) => {
    if (gate === null) expect(restsMm[touches]).toEqual([]);
    else hold(`rests after ${touches}`, restsMm[touches] ?? [], gate);
  });
});

it('a chain is one: the ball that is struck hits a second, and this one the third', () => {
  const { told, strokes } = agreementIn('chains');
  const chains = told.filter((touches) => touches.startsWith('ball 0 1, ball 1 2'));
  expect(chains.length).toBeGreaterThan(0.7 * strokes);
});

it('is reported in the README as it is: `npm run truth:report` writes it', () => {
  const sampleOf = (name: TableFamilyName) => agreementIn(name, TABLE_FAMILIES[name].sample);
  const sample = {
    level: sampleOf('level'),
    tilted: sampleOf('tilted'),
    rails: sampleOf('rails'),
    chains: sampleOf('chains'),
  };
  const readme = readFileSync('README.md', 'utf8');
  expect(readme).toBe(withTableReport(readme, sample));
});

it('has its edges where lines, arcs and mirrors put them, to rounding', () => {
  const random = seededRandom(142);
  const nearest = newNearest();
  for (const { lengthM, widthM } of Object.values(TABLE_SIZES)) {
    const shape = tableShape(lengthM, widthM, WPA_POCKETS);
    const outline = tableOutline({ ...WPA_POCKETS, lengthM, widthM });
    for (let count = 0; count < 500; count++) {
      const [x, y] = [between(random, -0.5, 0.5) * widthM, between(random, -0.5, 0.5) * lengthM];
      const away = shape.cushions.map((cushion) => {
        nearestOnCushion(cushion, x, y, nearest);
        return nearest.awayM;
      });
      expect(Math.min(...away)).toBeCloseTo(nearestEdge(outline, [x, y]).awayM, 13);
    }
  }
});
