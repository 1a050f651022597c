import { describe, expect, it } from 'vitest';
import { freePath } from '../../../../src/engine/direct/candidate-aims';
import { ContactProber, FLANKS } from '../../../../src/engine/direct/contact-probe';
import { addContactRoots, changesSign } from '../../../../src/engine/direct/contact-roots';
import { layoutOf } from '../../../../src/engine/direct/layout';
import { touchingSpans } from '../../../../src/engine/direct/touching-spans';
import { type Query, randomQuery } from '../../../harness/random-shots';
import { between, type Random, seededRandom } from '../../../harness/seeded-random';

/** A shot from anywhere within the ranges, on a kit whose balls may rub a great deal. */
function wideQuery(random: Random): Query {
  const { shot, kit } = randomQuery(random);
  return {
    shot: {
      ...shot,
      distanceM: Math.exp(between(random, -5, 1)),
      cutRad: between(random, -1.57, 1.57),
      elevationRad: between(random, 0, 1.3),
      speedMps: Math.exp(between(random, -1, 2.5)),
    },
    kit: {
      ...kit,
      ballFriction: { a: between(random, 0, 0.5), b: between(random, 0, 0.5), c: 5 * random() },
    },
  };
}

/** Every aim at which a contact on the path would send the object ball along the target line. */
function rootsOf({ shot, kit }: Query, prober: ContactProber): readonly number[] {
  const aims: number[] = [];
  for (const phase of freePath(shot, kit)) addContactRoots(phase, prober, aims);
  return aims;
}

const LOOKS = 1500;

/** Spans of aims, narrow, in which a dense look at the path sees the object ball change sides. */
function seenCrossings({ shot, kit }: Query): (readonly [number, number])[] {
  const prober = new ContactProber(layoutOf(shot, kit.ballRadiusM), shot.cutRad, kit);
  return freePath(shot, kit).flatMap((phase) =>
    touchingSpans(phase, prober).flatMap((times) => {
      const [fromS = 0, toS = 0] = [times[0], times.at(-1)];
      return FLANKS.flatMap((flank) => {
        // Densest at the rims, where the contact turns fastest.
        const looks = Array.from({ length: LOOKS + 1 }, (_, look) => {
          const share = (1 - Math.cos((Math.PI * look) / LOOKS)) / 2;
          const timeS = fromS + (toS - fromS) * share;
          prober.look(phase, timeS, flank);
          const { closingMps } = prober;
          return { aimRad: prober.aimRad(), closingMps, miss: prober.objectMiss() };
        });
        return looks.flatMap((now, index) => {
          const before = looks[index - 1];
          if (before === undefined || Math.min(before.closingMps, now.closingMps) < 1e-6) return [];
          const leap = Math.abs(now.miss - before.miss) > 0.3;
          if (leap || !changesSign(before.miss, now.miss)) return [];
          return [[before.aimRad, now.aimRad] as const];
        });
      });
    }),
  );
}

describe('contactRoots', () => {
  it.each([
    ['ordinary', 250, randomQuery],
    ['far-fetched', 250, wideQuery],
  ] as const)('finds every aim that a dense look at %s paths shows', (_, count, queryOf) => {
    const random = seededRandom(count);
    let seen = 0;
    for (let asking = 0; asking < count; asking++) {
      const query = queryOf(random);
      const { shot, kit } = query;
      const prober = new ContactProber(layoutOf(shot, kit.ballRadiusM), shot.cutRad, kit);
      const aims = rootsOf({ shot, kit }, prober);
      for (const [a, b] of seenCrossings(query)) {
        seen++;
        const [low, high] = [Math.min(a, b) - 1e-9, Math.max(a, b) + 1e-9];
        const wraps = high - low > Math.PI;
        expect(wraps || aims.some((aim) => low <= aim && aim <= high)).toBe(true);
      }
    }
    expect(seen).toBeGreaterThan(count / 3);
  });

  it('gives aims at which a contact does send the object ball along the target line', () => {
    const random = seededRandom(3);
    for (let asking = 0; asking < 200; asking++) {
      const { shot, kit } = wideQuery(random);
      const prober = new ContactProber(layoutOf(shot, kit.ballRadiusM), shot.cutRad, kit);
      for (const aim of rootsOf({ shot, kit }, prober)) {
        expect(Number.isFinite(aim)).toBe(true);
        expect(Math.abs(aim)).toBeLessThanOrEqual(Math.PI);
      }
    }
  });
});

describe('changesSign', () => {
  it('is a change of side by the shorter way', () => {
    expect(changesSign(0.1, -0.2)).toBe(true);
    expect(changesSign(-0.1, 0.2)).toBe(true);
    expect(changesSign(0.1, 0.2)).toBe(false);
    expect(changesSign(3, -3)).toBe(false);
    expect(changesSign(Number.NaN, 1)).toBe(false);
    expect(changesSign(1, Number.NaN)).toBe(false);
  });
});
