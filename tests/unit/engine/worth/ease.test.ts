import { describe, expect, it } from 'vitest';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';
import { touchingM } from '../../../../src/engine/lie/clearances';
import type { NamedBall, Position } from '../../../../src/engine/lie/position';
import { INVENTED_PROFILES, type StrokeProfile } from '../../../../src/engine/room/stroke-profile';
import { Ease } from '../../../../src/engine/worth/ease';
import { isHooked } from '../../../../src/engine/worth/hooked';
import { bestInHand } from '../../../../src/engine/worth/in-hand';
import { NINE_FOOT } from '../../../harness/invented-positions';

const at = (name: NamedBall['name'], xM: number, yM: number): NamedBall => ({ name, xM, yM });
const easeOf = (profile: StrokeProfile) =>
  new Ease({ shape: NINE_FOOT, kit: DEFAULT_KIT, profile });
const club = easeOf(INVENTED_PROFILES.club);
const chance = (position: Position, ease = club) => ease.easiest(position, [1])?.chance ?? 0;

describe('the ease of a layout', () => {
  const cut = [at('cue', 0, 0), at(1, 0.3, 0.7)];

  it('is less from farther away, for a wilder stroke and off a rail', () => {
    expect(chance([at('cue', 0.2, 0.4), at(1, 0.3, 0.7)])).toBeGreaterThan(chance(cut));
    expect(chance(cut, easeOf(INVENTED_PROFILES.steady))).toBeGreaterThan(chance(cut));
    expect(chance(cut)).toBeGreaterThan(chance(cut, easeOf(INVENTED_PROFILES.beginner)));
    const railY = touchingM(DEFAULT_KIT) - NINE_FOOT.lengthM / 2;
    const free = chance([at('cue', 0.1, railY + 0.12), at(1, 0.3, 0.2)]);
    expect(chance([at('cue', 0.1, railY), at(1, 0.3, 0.2)])).toBeLessThan(free - 0.05);
  });

  it('names the ball and the pocket', () => {
    const position = [at('cue', 0, 0), at(1, 0.3, 0.7), at(2, 0.55, 0.02)];
    expect(club.easiest(position, [1, 2])).toMatchObject({ ball: 2, pocket: 'middle-right' });
    expect(club.easiest(position, [1])?.ball).toBe(1);
    expect(club.easiest(position, [])).toBeNull();
  });

  it('counts what stands in the way of either ball', () => {
    const blocked = [at('cue', 0, 0), at(1, 0, 0.5), at(2, 0, 0.25)];
    expect(club.easiest(blocked, [1])).toBeNull();
    const open = chance([at('cue', 0.15, 0.4), at(1, 0.3, 0.7)]);
    const covered = chance([at('cue', 0.15, 0.4), at(1, 0.3, 0.7), at(2, 0.42, 0.91)]);
    expect(covered).toBeLessThan(open - 0.3);
  });

  it('is the same from mirrored sides, and between those of all who may be the player', () => {
    const { directionRad, tipM, speedShare } = INVENTED_PROFILES.club;
    const mirrored = [at('cue', 0, 0), at(1, -0.3, 0.7)];
    expect(chance(mirrored)).toBeCloseTo(chance(cut), 9);
    const likely = [0.5, 2].map(
      (times) => [times * directionRad, tipM, speedShare, 0, 0, 0, 1] as const,
    );
    const some = Array.from({ length: 128 }, (_, place) => likely[place < 64 ? 0 : 1] ?? likely[0]);
    const mixed = chance(cut, easeOf({ ...INVENTED_PROFILES.club, likely: some as never }));
    const [best = 0, worst = 0] = [0.5, 2].map((times) =>
      chance(cut, easeOf({ ...INVENTED_PROFILES.club, directionRad: times * directionRad })),
    );
    expect(mixed).toBeCloseTo((best + worst) / 2, 6);
  });
});

describe('the cue ball in hand', () => {
  it('is put where the pot is all but sure', () => {
    const balls = [at(1, 0.1, 0.6), at(2, -0.3, -0.5)];
    const best = bestInHand(club, balls, [1]);
    expect(best?.chance).toBeGreaterThan(0.9);
    const placed = best === null ? balls : [best.cueBall, ...balls];
    expect(chance(placed)).toBeGreaterThanOrEqual(best?.chance ?? 1);
  });

  it('finds no place where nothing may be hit', () => {
    expect(bestInHand(club, [at(2, 0, 0)], [1])).toBeNull();
  });
});

describe('a hooked cue ball', () => {
  const wall = [at(2, 0, 0.2), at(3, 0.058, 0.2), at(4, -0.058, 0.2)];

  it('sees no part of a ball that may be hit', () => {
    expect(isHooked([at('cue', 0, 0), at(1, 0, 0.9), ...wall], [1], DEFAULT_KIT)).toBe(true);
    expect(isHooked([at('cue', 0, 0), at(1, 0.58, 0.35), ...wall], [1], DEFAULT_KIT)).toBe(false);
    expect(isHooked([at('cue', 0, 0), at(1, 0, 0.9), ...wall], [1, 2], DEFAULT_KIT)).toBe(false);
  });
});
