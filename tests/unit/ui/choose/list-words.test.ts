import { describe, expect, it } from 'vitest';
import type { RankedWay } from '../../../../src/engine/plan/ranked-way';
import { differenceLine } from '../../../../src/ui/choose/chance-words';
import {
  orderWords,
  rowLine,
  sharedLine,
  sharedReason,
} from '../../../../src/ui/choose/list-words';
import { roughDistance } from '../../../../src/units/rough-distance';

const edge = (value: number, endedBy: 'thin' | 'full') => ({ value, endedBy });
const room = (low: number, high: number) => ({
  low: edge(low, 'thin'),
  high: edge(high, 'full'),
  directionPerUnit: 1,
});

/** An invented way at 2 m/s. */
const WAY: RankedWay = {
  option: {
    place: 0,
    stroke: { aimRad: 0, side: 0, height: 0, elevationRad: 0.05, speedMps: 2 },
    chance: {
      share: 0.4,
      sds: { direction: 2, side: 0, height: 0, elevation: 0, speed: 0, kit: 0 },
    },
  },
  way: { side: 'none', arrival: 'roll', isDrag: false, speed: 'medium', isRaised: false },
  chance: 0.4,
  chanceError: 0.01,
  hardest: 'direction',
  windows: {
    aimRad: room(-0.01, 0.01),
    speedMps: room(1.8, 2.3),
    side: room(-0.1, 0.1),
    height: room(-0.1, 0.1),
    elevationRad: room(0, 0.2),
  },
  rest: { xM: 0, yM: 0, sdM: 0.14, places: [{ xM: 0, yM: 0 }] },
  goodPosition: null,
  clean: 1,
  scratch: 0,
};
const BY_SPEED: RankedWay = { ...WAY, hardest: 'speed', scratch: 0.08 };
const inCm = (lengthM: number) => roughDistance(lengthM, 'cm', 2.54);
const AIM = 'little room for the line of the cue; thin aimed left, full aimed right';

describe('words for a list of ways', () => {
  it('say what it is ordered by, with a zone and without', () => {
    expect(orderWords(false, 'figures', 'you')).toBe(
      'By how often the ball goes for you without a scratch',
    );
    expect(orderWords(true, 'figures', 'Ann')).toMatch(/goes for Ann and .* in the zone$/);
  });

  it('tell no figure of how often where nobody is known', () => {
    expect(orderWords(false, 'ease', 'you')).toBe('The easiest first');
    expect(orderWords(true, 'ease', 'you')).toMatch(/^The easiest .* in the zone first$/);
    const zoned = { ...BY_SPEED, goodPosition: 0.25 };
    expect(rowLine(zoned, AIM, 'ease', inCm)).toMatch(
      /^To make at all hard, now and then a scratch, at most 10 % slower/,
    );
  });

  it('say once what all have in common', () => {
    const ways = [WAY, WAY, WAY];
    const shared = sharedReason(ways);
    expect(shared).toBe(AIM);
    expect(sharedLine(ways, AIM)).toBe(`All of them: ${AIM}.`);
    expect(rowLine(WAY, shared, 'figures', inCm)).toBe(
      'At most 10 % slower, 15 % faster, cue ball spreads 14 cm',
    );
  });

  it('say which of the first goes more often for a player, and whether it stays in the zone', () => {
    const struck = (place: number, speedMps: number): RankedWay => ({
      ...WAY,
      option: { ...WAY.option, place, stroke: { ...WAY.option.stroke, speedMps } },
    });
    const [soft, firm] = [struck(7, 1.2), struck(3, 2.4)];
    const differing = { better: soft, other: firm, forPlayer: 0.09, forMost: -0.02 };
    expect(differenceLine(differing, [firm, soft], 'you')).toBe(
      'For you the softer one (second) goes 9 in 100 more than the first; for most 2 fewer.',
    );
    const zoned = { ...differing, better: { ...soft, goodPosition: 0.5 }, forMost: 0 };
    expect(differenceLine(zoned, [soft, firm], 'Ann')).toBe(
      'For Ann the softer one (first) goes and stops in the zone 9 in 100 more than the second; for most no more.',
    );
  });

  it('say of the few that differ why they do', () => {
    const ways = [WAY, BY_SPEED, WAY];
    const shared = sharedReason(ways);
    expect(sharedLine(ways, AIM)).toBe(`Where nothing else is said: ${AIM}.`);
    expect(rowLine(BY_SPEED, shared, 'figures', inCm)).toBe(
      'Scratch 8 %, at most 10 % slower, 15 % faster, cue ball spreads 14 cm. Speed window narrow; thin if slow, full if fast',
    );
  });

  it('say every reason in its row where most have one of their own', () => {
    expect(sharedReason([WAY, BY_SPEED])).toBeNull();
    expect(sharedReason([WAY])).toBeNull();
    expect(rowLine(WAY, null, 'figures', inCm)).toMatch(/\. Little room for the line of the cue/);
  });

  it('tell room for the speed only where there is little of it', () => {
    const ample = (speedMps: ReturnType<typeof room>) =>
      rowLine(
        { ...WAY, windows: WAY.windows && { ...WAY.windows, speedMps } },
        AIM,
        'figures',
        inCm,
      );
    expect(ample(room(1.7, 5))).toBe('At most 15 % slower, cue ball spreads 14 cm');
    expect(ample(room(0.8, 5))).toBe('Cue ball spreads 14 cm');
  });

  it('put the chance to go second where there is a zone', () => {
    expect(rowLine({ ...WAY, goodPosition: 0.25 }, AIM, 'figures', inCm)).toMatch(
      /^Goes at all 40 %, at most/,
    );
  });

  it('say the reason alone where nothing more is known', () => {
    const bare = { ...WAY, windows: null, rest: { ...WAY.rest, places: [] } };
    expect(rowLine(bare, null, 'figures', inCm)).toBe('Little room for the line of the cue');
  });
});
