import { describe, expect, it } from 'vitest';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';
import { kitAlong } from '../../../../src/engine/kit/kit-along';
import { UNMEASURED } from '../../../../src/engine/kit/kit-spread';
import { chanceMap } from '../../../../src/engine/plan/chance-map';
import { byChance, distinctWays } from '../../../../src/engine/plan/distinct-ways';
import { type OptionGrid, placesOf } from '../../../../src/engine/plan/option-grid';
import type { OptionQuestion } from '../../../../src/engine/plan/solve-option';
import { stretchesOf, sweepOptions } from '../../../../src/engine/plan/sweep-options';
import { INVENTED_PROFILES } from '../../../../src/engine/room/stroke-profile';

const RAD = Math.PI / 180;
const QUESTION: OptionQuestion = {
  distanceM: 1,
  cutRad: 30 * RAD,
  target: { kind: 'mouth', distanceM: 0.8, mouthM: 0.116 },
  kit: kitAlong(DEFAULT_KIT, 0),
  spread: UNMEASURED,
  profile: INVENTED_PROFILES.club,
};
const GRID: OptionGrid = {
  sides: [-0.4, 0, 0.4],
  speedsMps: [0.8, 1.6, 3.2],
  heights: [0, 0.3, -0.3],
  elevationsRad: [3 * RAD, 12 * RAD],
};
const all = sweepOptions(QUESTION, GRID, { from: 0, to: placesOf(GRID) });

describe('sweepOptions', () => {
  it('is the same in stretches, whoever does them', () => {
    const stretches = stretchesOf(GRID);
    expect(stretches).toHaveLength(6);
    const parts = [...stretches].reverse().flatMap((one) => sweepOptions(QUESTION, GRID, one));
    expect(parts.sort((a, b) => a.place - b.place)).toEqual(all);
  });

  it('answers most of a shot that can be played in most ways', () => {
    // Of each height and elevation with side, two in three are beyond the miscue limit.
    expect(all.length).toBeGreaterThan(placesOf(GRID) / 3);
    for (const { chance, stroke } of all) {
      expect(chance.share).toBeGreaterThan(0);
      expect(chance.share).toBeLessThan(1);
      expect(Number.isFinite(stroke.aimRad)).toBe(true);
    }
  });

  it('finds the mirror image as likely', () => {
    const mirrored = { ...QUESTION, cutRad: -QUESTION.cutRad };
    const other = sweepOptions(mirrored, GRID, { from: 0, to: placesOf(GRID) });
    const best = [...all].sort(byChance)[0];
    const twin = other.find(
      ({ stroke }) =>
        stroke.side === -(best?.stroke.side ?? 0) &&
        stroke.height === best?.stroke.height &&
        stroke.speedMps === best?.stroke.speedMps &&
        stroke.elevationRad === best?.stroke.elevationRad,
    );
    expect(twin?.chance.share).toBeCloseTo(best?.chance.share ?? Number.NaN, 9);
    expect(twin?.stroke.aimRad).toBeCloseTo(-(best?.stroke.aimRad ?? Number.NaN), 9);
  });

  // Common practice, no source.
  it('finds the shot without side the easiest for one who does not know the cue', () => {
    expect([...all].sort(byChance)[0]?.stroke.side).toBe(0);
  });
});

describe('chanceMap', () => {
  const map = chanceMap(GRID, all);

  it('has the best of every side and speed', () => {
    expect(map.best.map((row) => row.length)).toEqual([3, 3, 3]);
    map.best.forEach((row, speed) => {
      row.forEach((cell, side) => {
        const rivals = all.filter(
          ({ stroke }) =>
            stroke.side === GRID.sides[side] && stroke.speedMps === GRID.speedsMps[speed],
        );
        expect(cell?.chance.share ?? 0).toBe(
          Math.max(0, ...rivals.map(({ chance }) => chance.share)),
        );
      });
    });
  });

  it('refuses an option of another grid', () => {
    const [first] = all;
    if (first === undefined) throw new Error('no option');
    expect(() => chanceMap(GRID, [{ ...first, place: placesOf(GRID) }])).toThrow(RangeError);
  });
});

describe('distinctWays', () => {
  const ways = distinctWays(QUESTION, all, 3 * RAD);

  it('tells the easiest first, and every kind once', () => {
    const shares = ways.map(({ option }) => option.chance.share);
    expect(shares).toEqual([...shares].sort((a, b) => b - a));
    const kinds = ways.map(({ way: { side, arrival, isDrag, speed } }) =>
      [side, arrival, isDrag, speed].join(' '),
    );
    expect(new Set(kinds).size).toBe(kinds.length);
  });

  it('knows inside from outside, and roll from draw', () => {
    for (const { option, way } of ways) {
      if (option.stroke.side > 0) expect(way.side).toBe('inside');
      if (option.stroke.side < 0) expect(way.side).toBe('outside');
      // A firm ball struck low reaches a ball a metre off with its backspin, a soft one rolls there.
      const { height, speedMps } = option.stroke;
      if (height === -0.3 && speedMps === 3.2) expect(way.arrival).not.toBe('roll');
      if (height === 0.3) expect(way.arrival).toBe('roll');
    }
  });

  it('calls a ball that was struck low and lost its backspin a drag shot', () => {
    const drags = ways.filter(({ way }) => way.isDrag);
    expect(drags.length).toBeGreaterThan(0);
    for (const { option, way } of drags) {
      expect(option.stroke.height).toBeLessThan(0);
      expect(way.arrival).not.toBe('draw');
    }
  });
});
