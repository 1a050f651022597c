import { describe, expect, it } from 'vitest';
import { Standing } from '../../../../src/engine/worth/standing';
import { type Random, seededRandom } from '../../../harness/seeded-random';

/** Whether who is at the table wins, of two who always play at a shot: the first of such ease, then usual ones. */
function wins(random: Random, ease: number, usual: number, balls: number): boolean {
  let left = balls;
  let isMine = true;
  let chance = ease;
  while (left > 0) {
    if (random() < chance) left--;
    else isMine = !isMine;
    chance = usual;
  }
  return isMine;
}

describe('how a game stands', () => {
  // Of a usual shot F(1) = ½ + ½ (1 − F(1)), so ⅔; F(2) = ½ ⅔ + ½ (1 − F(2)), so 5⁄9.
  const even = new Standing(1 / 2);

  it('is what the recursion comes to by hand', () => {
    expect(even.share(1, 1)).toBe(1);
    expect(even.share(1 / 2, 1)).toBeCloseTo(2 / 3, 12);
    expect(even.share(3 / 4, 1)).toBeCloseTo(3 / 4 + (1 / 4) * (1 / 3), 12);
    expect(even.share(1, 2)).toBeCloseTo(2 / 3, 12);
    expect(even.share(1 / 2, 2)).toBeCloseTo(5 / 9, 12);
    expect(even.share(3 / 4, 2)).toBeCloseTo((3 / 4) * (2 / 3) + (1 / 4) * (4 / 9), 12);
  });

  it('is even where a shot is no better than a safety', () => {
    // Of one ball: ease + ⅓ (1 − ease) is ½ where the ease is ¼, and so of any number.
    for (const balls of [1, 2, 5]) {
      for (const ease of [0, 0.1, 0.25]) expect(even.share(ease, balls)).toBeCloseTo(1 / 2, 12);
      expect(even.share(0.26, balls)).toBeGreaterThan(1 / 2);
    }
  });

  it('is the shot itself where nobody else misses, and where nobody pots it counts half of a miss', () => {
    expect(new Standing(1).share(0.7, 3)).toBeCloseTo(0.7, 12);
    expect(new Standing(0).share(0.4, 1)).toBeCloseTo(0.4 + 0.6 / 2, 12);
  });

  it('is the share of games that two equal players come to', () => {
    const random = seededRandom(2203);
    const games = 20_000;
    for (const [usual, ease, balls] of [
      [0.7, 0.9, 1],
      [0.7, 0.6, 2],
      [0.4, 0.5, 3],
      [0.9, 0.8, 6],
    ] as const) {
      const won = Array.from({ length: games }, () => wins(random, ease, usual, balls));
      const share = won.filter(Boolean).length / games;
      const error = Math.sqrt((share * (1 - share)) / games);
      const told = new Standing(usual).share(ease, balls);
      expect(Math.abs(told - share)).toBeLessThan(4 * error);
    }
  });

  it('is better with an easier shot, and with fewer balls to go', () => {
    for (const usual of [0.3, 0.7]) {
      const standing = new Standing(usual);
      for (const ease of [0.5, 0.7, 0.9]) {
        expect(standing.share(ease + 0.05, 2)).toBeGreaterThan(standing.share(ease, 2));
        expect(standing.share(ease, 1)).toBeGreaterThan(standing.share(ease, 2));
        expect(standing.share(ease, 2)).toBeGreaterThan(standing.share(ease, 9));
      }
    }
  });
});
