import { describe, expect, it } from 'vitest';
import { alongCushions, cushionsAt } from '../../../../src/engine/fit/along-cushions';
import { layOut } from '../../../../src/engine/fit/fit-layout';
import { leastSquares } from '../../../../src/engine/numerics/least-squares';

/** What readings say of a restitution z and a friction f, each over its error. */
type Readings = (z: number, f: number) => readonly number[];

const FARTHEST = 5;
const STEP = 1e-4;

/** Half the squares of readings and standard normal priors, as a problem of least squares. */
function problemOf(readings: Readings) {
  const all = ([z = 0, f = 0]: readonly number[]) => [...readings(z, f), z, f];
  const costAt = (at: readonly number[]) =>
    all(at).reduce((sum, value) => sum + (value * value) / 2, 0);
  return {
    costAt,
    curvedAt: (at: readonly number[]) => {
      const values = all(at);
      const slopes = at.map((_, index) => {
        const moved = (by: number) => all(at.map((value, k) => (k === index ? value + by : value)));
        const [less, more] = [moved(-STEP), moved(STEP)];
        return values.map((_, row) => ((more[row] ?? 0) - (less[row] ?? 0)) / (2 * STEP));
      });
      const times = (one: readonly number[], other: readonly number[]) =>
        one.reduce((sum, value, row) => sum + value * (other[row] ?? 0), 0);
      return {
        cost: costAt(at),
        gradient: slopes.map((column) => times(column, values)),
        curvature: slopes.map((column) => slopes.map((other) => times(column, other))),
      };
    },
  };
}

function beliefOf(readings: Readings, start: readonly number[]) {
  const problem = problemOf(readings);
  const seek = (from: readonly number[], patience = {}, held = -1) => {
    const bound = (far: number) => from.map((value, index) => (index === held ? value : far));
    return leastSquares(problem, from, { min: bound(-FARTHEST), max: bound(FARTHEST) }, patience);
  };
  const places = { restitution: 0, friction: 1, lackSd: 1 };
  return alongCushions(seek(start), places, { seek, costOfSpread: () => 0 });
}

/** By summing over a fine grid: how far both may lie from a point, one standard deviation each. */
function summedAbout(readings: Readings, [z0 = 0, f0 = 0]: readonly number[]) {
  const { costAt } = problemOf(readings);
  let [whole, squareZ, squareF] = [0, 0, 0];
  for (let z = -FARTHEST; z <= FARTHEST; z += 0.02) {
    for (let f = -FARTHEST; f <= FARTHEST; f += 0.02) {
      const weight = Math.exp(-costAt([z, f]));
      whole += weight;
      squareZ += weight * (z - z0) ** 2;
      squareF += weight * (f - f0) ** 2;
    }
  }
  // Nothing is told to be known worse than before.
  return [squareZ, squareF].map((square) => Math.min(1, Math.sqrt(square / whole)));
}

describe('how far the unknowns may lie where cushions have been read', () => {
  it.each<[string, Readings, readonly number[]]>([
    // A lack of 0.02 e^−z that is read to 0.03.
    ['a lively cushion', (z, f) => [(0.02 * Math.exp(-z) - 0.055) / 0.03, (f - 0.5) / 0.2], [0, 0]],
    ['much friction or little', (z, f) => [(f * f - 0.2) / 0.2, (z - 0.4) / 0.5], [0, 1]],
    ['both', (z, f) => [(0.02 * Math.exp(-z) - 0.04) / 0.02, (f * f - 0.3 * z - 1) / 0.5], [0, 1]],
  ])('is that of all that may be: %s', (_, readings, start) => {
    const { point, covariance } = beliefOf(readings, start);
    summedAbout(readings, point).forEach((value, index) => {
      const sd = Math.sqrt(covariance[index]?.[index] ?? Number.NaN);
      expect(Math.abs(sd / value - 1)).toBeLessThan(0.2);
    });
  });

  it('leads to a top that is higher', () => {
    // Two tops, at frictions of −1.5 and 1; a restitution of −2.5 goes with one, of 0 with the other.
    const readings: Readings = (z, f) => [((f - 1) * (f + 1.5)) / 0.3, (z - f + 1) / 0.5];
    const { top } = beliefOf(readings, [-2, -1.5]);
    expect(top.at[1]).toBeGreaterThan(0);
  });

  it('is the parabola’s where they have not', () => {
    const { top, covariance } = beliefOf((_, f) => [(f - 1) / 0.5], [0, 0]);
    expect(top.at[1]).toBeCloseTo(1 / 1.25, 6);
    expect(covariance[1]?.[1]).toBeCloseTo(0.2, 6);
    expect(covariance[0]?.[0]).toBeCloseTo(1, 6);
  });

  it('finds the cushions of the table that is asked for, or none', () => {
    const parts = { cue: 'cue', cloth: 'cloth', balls: 'balls', table: 'mine' };
    const layout = layOut([], [parts]);
    const { restitution, friction } = cushionsAt(layout, parts, []);
    expect(layout.unknowns[restitution]?.quantity).toBe('cushionRestitution');
    expect(layout.unknowns[friction]?.quantity).toBe('cushionFriction');
    expect(cushionsAt(layout, { ...parts, table: 'another' }, []).restitution).toBe(-1);
    expect(cushionsAt(layout, undefined, []).restitution).toBe(-1);
  });
});
