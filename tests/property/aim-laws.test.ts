import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { playAim } from '../../src/engine/direct/play-aim';
import { solveAim } from '../../src/engine/direct/solve-aim';
import { type Query, randomQuery } from '../harness/random-shots';
import { seededRandom } from '../harness/seeded-random';

const query = (slopeM_per_M: number) =>
  fc.integer().map((seed) => randomQuery(seededRandom(seed), slopeM_per_M));

function mirrored({ shot, kit }: Query): Query {
  const { alongM_per_M, rightM_per_M } = kit.bedSlope;
  return {
    shot: { ...shot, cutRad: -shot.cutRad, side: -shot.side },
    kit: { ...kit, bedSlope: { alongM_per_M, rightM_per_M: -rightM_per_M } },
  };
}

describe.each([0, 0.002])('laws of the aim on a bed tilted up to %d', (slope) => {
  it('mirrors: the other hand’s shot has the other hand’s aim', () => {
    fc.assert(
      fc.property(query(slope), (asked) => {
        const plain = solveAim(asked.shot, asked.kit);
        const other = mirrored(asked);
        const mirror = solveAim(other.shot, other.kit);
        expect(mirror.ok).toBe(plain.ok);
        if (!plain.ok || !mirror.ok) return;
        expect(mirror.aimRad).toBeCloseTo(-plain.aimRad, 7);
        expect(mirror.parts.swerveRad).toBeCloseTo(-plain.parts.swerveRad, 7);
        expect(mirror.arrival.sideSpinRadS).toBeCloseTo(-plain.arrival.sideSpinRadS, 5);
      }),
      { numRuns: 300, seed: 1 },
    );
  });

  it('splits exactly: squirt, swerve and throw sum to the aim', () => {
    fc.assert(
      fc.property(query(slope), ({ shot, kit }) => {
        const result = solveAim(shot, kit);
        if (!result.ok) return;
        const { squirtRad, swerveRad, throwRad } = result.parts;
        expect(Math.abs(squirtRad + swerveRad + throwRad - result.aimRad)).toBeLessThan(1e-15);
      }),
      { numRuns: 300, seed: 2 },
    );
  });

  it('answers the same question the same way', () => {
    fc.assert(
      fc.property(query(slope), ({ shot, kit }) => {
        expect(solveAim(shot, kit)).toEqual(solveAim(shot, kit));
      }),
      { numRuns: 100, seed: 3 },
    );
  });

  it('takes the smallest of its aims, each of which also goes', () => {
    fc.assert(
      fc.property(query(slope), ({ shot, kit }) => {
        const result = solveAim(shot, kit);
        if (!result.ok) return;
        for (const other of result.otherAimsRad) {
          expect(Math.abs(other)).toBeGreaterThanOrEqual(Math.abs(result.aimRad));
          const played = playAim(shot, kit, other);
          expect(played.ok && played.objectBall.directionRad).toBeCloseTo(shot.cutRad, 6);
        }
      }),
      { numRuns: 300, seed: 4 },
    );
  });
});
