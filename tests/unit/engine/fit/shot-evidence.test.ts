import { describe, expect, it } from 'vitest';
import {
  logSpread,
  readingCovariance,
  shotEvidence,
  solveSpread,
} from '../../../../src/engine/fit/shot-evidence';
import type { ShotResiduals } from '../../../../src/engine/fit/shot-residuals';

/** A reading that hangs on the strays by straight slopes, and lies so far off. */
function straight(offs: readonly number[], slopes: readonly (readonly number[])[]): ShotResiduals {
  return {
    touches: [],
    readings: offs.length,
    at: (_, strays) =>
      offs.map(
        (off, row) =>
          off - strays.reduce((sum, stray, k) => sum + stray * (slopes[row]?.[k] ?? 0), 0),
      ),
  };
}

describe('shotEvidence', () => {
  it('shares a miss between reading and stray in the proportion of their variances', () => {
    // One reading that a stray moves by 3 of the reading's deviations: 9 parts in 10 are the stray's.
    const evidence = shotEvidence(straight([2], [[3, 0, 0, 0, 0]]), []);
    expect(evidence?.strays[0]).toBeCloseTo((3 / 10) * 2, 6);
    expect(evidence?.residuals[0]).toBeCloseTo(2 / 10, 6);
    // What is left is the miss over the whole spread, squared.
    expect(evidence?.squares).toBeCloseTo(4 / 10, 6);
  });

  it('comes to the squares of the whole covariance where readings share a stray', () => {
    const slopes = [
      [1, 2, 0, 0, 0.5],
      [-1, 0.5, 3, 0, 0],
    ];
    const offs = [1.5, -0.7];
    const evidence = shotEvidence(straight(offs, slopes), []);
    const weighted = solveSpread(slopes, offs);
    const squares = offs.reduce((sum, off, row) => sum + off * (weighted[row] ?? 0), 0);
    expect(evidence?.squares).toBeCloseTo(squares, 6);
  });

  it('finds the likeliest stray where a reading bends', () => {
    // off - e - e²/4 with e²: the least of (1 - e - e²/4)² + e² lies where its slope is nil.
    const bent: ShotResiduals = {
      touches: [],
      readings: 1,
      at: (_, [e = 0]) => [1 - e - (e * e) / 4],
    };
    const e = shotEvidence(bent, [])?.strays[0] ?? Number.NaN;
    expect(-2 * (1 - e - (e * e) / 4) * (1 + e / 2) + 2 * e).toBeCloseTo(0, 3);
  });

  it('finds the likeliest stray beyond a fold, where slopes of either side lead to the other', () => {
    // A ball that reaches one more cushion runs on less for what it is struck harder.
    const folded: ShotResiduals = {
      touches: [],
      readings: 1,
      at: (_, [e = 0]) => [-60 - (e > -1 ? 10 * e : 40 * e + 30)],
    };
    const evidence = shotEvidence(folded, []);
    // On the far side the reading is off by 90 and hangs on the stray by 40.
    expect(evidence?.strays[0]).toBeCloseTo((-90 * 40) / (1 + 40 ** 2), 4);
    expect(evidence?.squares).toBeCloseTo(90 ** 2 / (1 + 40 ** 2), 4);
  });

  it('is null where the kit leaves nothing to read', () => {
    expect(shotEvidence({ touches: [], readings: 1, at: () => null }, [])).toBeNull();
  });

  it('comes to the same from strays found earlier', () => {
    const shot = straight(
      [2, 1],
      [
        [3, 0, 1, 0, 0],
        [0, 1, 0, 0, 2],
      ],
    );
    const alone = shotEvidence(shot, []);
    const led = shotEvidence(shot, [], {
      strays: [1, -1, 2, 0, 0.5],
      perStray: alone?.perStray ?? [],
    });
    expect(led?.squares).toBeCloseTo(alone?.squares ?? Number.NaN, 6);
  });
});

describe('the spread of readings', () => {
  it('is one on the diagonal and the strays on top', () => {
    expect(readingCovariance([[3, 4, 0, 0, 0]])).toEqual([[26]]);
  });

  it('has the logarithm of its determinant', () => {
    // (1 + 1)(1 + 4) - (1·2)² = 6.
    expect(logSpread([[1], [2]])).toBeCloseTo(Math.log(2 * 5 - 4), 12);
  });
});
