import { describe, expect, it } from 'vitest';
import { nearestOnCushion, newNearest } from '../../src/engine/table/nearest-on-cushion';
import { TABLE_SIZES, WPA_POCKETS } from '../../src/engine/table/pocket-standard';
import { tableShape } from '../../src/engine/table/table-shape';
import { CAMPAIGN_TIMEOUT_MS, campaignSize, tell } from '../harness/campaign-size';
import { comparableQuery, compareTables } from '../harness/compare-tables';
import { between, seededRandom } from '../harness/seeded-random';
import { nearestEdge, tableOutline } from '../truth/reference/table-outline';
import { spreadOf } from '../truth/report/spread';

/** Most that the mean, 99 of 100, and all may be apart, mm. */
type Gate = readonly [mean: number, p99: number, max: number];

/**
 * Up to the first touch all is closed form; on a tilted bed a path that only skims a surface may be
 * seen to touch it 10 nm late. Then a cushion's 32 increments show, against the 20,000 of the
 * reference, and each touch after that multiplies what there is by distances over radii.
 */
const GATES: Readonly<Record<number, readonly Gate[]>> = {
  0: [
    [1e-8, 1e-7, 1e-6],
    [0.05, 0.4, 1],
    [0.3, 5, 10],
  ],
  0.002: [
    [1e-4, 1e-2, 0.1],
    [0.05, 0.4, 1],
    [0.3, 5, 10],
  ],
};

describe.each(Object.entries(GATES))('a table whose bed tilts up to %s', (slope, gates) => {
  it(
    'is played as the ODE solver and small impulses play it, up to the third touch',
    () => {
      const strokes = campaignSize(24, 500);
      const compared = Array.from({ length: strokes }, (_, seed) =>
        compareTables(comparableQuery(seededRandom(1 + seed), Number(slope))),
      );
      for (const { engine, reference } of compared) expect(engine).toBe(reference);
      gates.forEach(([mean, p99, max], at) => {
        const places = compared.flatMap(({ touches }) => touches[at]?.placeMm ?? []);
        const spread = spreadOf(places);
        tell(
          `slope ${slope}, touch ${at + 1}: mean ${spread.mean}, 99 % ${spread.p99}, max ${spread.max} mm`,
        );
        expect(spread.count).toBeGreaterThan(0.6 * strokes);
        expect(spread.mean).toBeLessThan(mean);
        expect(spread.p99).toBeLessThan(p99);
        expect(spread.max).toBeLessThan(max);
      });
    },
    CAMPAIGN_TIMEOUT_MS,
  );
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
