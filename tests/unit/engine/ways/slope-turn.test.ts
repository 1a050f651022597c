import { expect, it } from 'vitest';
import { laidTable, playLaid } from '../../../../src/engine/goal/laid-table';
import { DEFAULT_KIT, type Kit } from '../../../../src/engine/kit/kit';
import type { Position } from '../../../../src/engine/lie/position';
import { findPlays } from '../../../../src/engine/worth/find-plays';
import type { WorthyWay } from '../../../../src/engine/worth/worthy-ways';
import { NINE_FOOT } from '../../../harness/invented-positions';
import { waysQuestion } from '../../../harness/ways-positions';

/** Invented: a long shot, slightly cut. */
const BALLS: Position = [
  { name: 'cue', xM: 0.05, yM: -0.7 },
  { name: 1, xM: 0.3, yM: 0.4 },
];
const TILTED: Kit = { ...DEFAULT_KIT, bedSlope: { alongM_per_M: 0, rightM_per_M: 0.006 } };

function waysOn(kit: Kit): readonly WorthyWay[] {
  const asked = waysQuestion(BALLS, { kit, kinds: ['direct', 'bank'], pocket: 'far-right' });
  const rule = { most: 4, keepsLow: true, order: 'goes', hasSafeties: false } as const;
  const search = findPlays(asked, rule);
  let news = search.next();
  while (news.done !== true) news = search.next();
  return news.value.plays.flatMap((play) => ('struck' in play ? [] : [play]));
}

function falls({ headingRad, option }: WorthyWay, kit: Kit, turnRad: number): boolean {
  const stroke = { ...option.stroke, aimRad: headingRad + option.stroke.aimRad + turnRad };
  const play = playLaid(laidTable(BALLS, NINE_FOOT), stroke, kit);
  return play?.balls[1]?.outcome.kind === 'pocketed';
}

it('is what the cue must be turned by for the same to happen on a level bed, less where firmer', () => {
  const told = waysOn(TILTED).flatMap((way) => (way.slope ? [{ way, slope: way.slope }] : []));
  expect(told.length).toBeGreaterThan(2);
  for (const { way, slope } of told) {
    expect(falls(way, TILTED, 0)).toBe(true);
    expect(falls(way, DEFAULT_KIT, 0)).toBe(false);
    const turned = [slope.turnRad, -slope.turnRad].map((turn) => falls(way, DEFAULT_KIT, turn));
    expect(turned.filter(Boolean)).toHaveLength(1);
    expect(slope.firmerRad).toBeLessThan(slope.turnRad);
  }
});

it('is not told of a level bed', () => {
  expect(waysOn(DEFAULT_KIT).filter(({ slope }) => slope !== undefined)).toEqual([]);
});
