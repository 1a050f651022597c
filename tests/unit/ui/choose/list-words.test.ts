import { describe, expect, it } from 'vitest';
import type { RankedWay } from '../../../../src/engine/plan/ranked-way';
import { differenceLine, easeBeside, rangeLine } from '../../../../src/ui/choose/chance-words';
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
      sds: { direction: 2, side: 0, height: 0, elevation: 0, speed: 2, kit: 0 },
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
const AIM = 'the aim leaves little room';

describe('words for a list of ways', () => {
  it('say what it is ordered by, with a zone and without', () => {
    expect(orderWords(false, 'figures', 'you')).toBe(
      'For you, the likeliest first: pot without a scratch',
    );
    expect(orderWords(true, 'figures', 'Ann')).toMatch(
      /^For Ann, the likeliest first: pot and zone$/,
    );
  });

  it('tell no figure of how often where nobody is known', () => {
    expect(orderWords(false, 'ease', 'you')).toBe('For most players, the easiest first');
    expect(orderWords(true, 'ease', 'you')).toMatch(
      /^For most players, the easiest first: pot and zone$/,
    );
    const zoned = { ...BY_SPEED, goodPosition: 0.25 };
    expect(rowLine(zoned, AIM, 'ease', inCm)).toMatch(
      /^The pot alone: hard\. Now and then a scratch\. Hit no more than 10\u00a0% softer/,
    );
  });

  it('say once what all have in common', () => {
    const ways = [WAY, WAY, WAY];
    const shared = sharedReason(ways);
    expect(shared).toBe(AIM);
    expect(sharedLine(ways, AIM)).toBe(`All of them: ${AIM}.`);
    expect(rowLine(WAY, shared, 'figures', inCm)).toBe(
      'Hit no more than 10\u00a0% softer or 15\u00a0% firmer. Cue ball stops give or take 14 cm',
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
    expect(sharedLine(ways, AIM)).toBe(`Unless a way says otherwise: ${AIM}.`);
    expect(rowLine(BY_SPEED, shared, 'figures', inCm)).toBe(
      'Scratch 1 in 10. Hit no more than 10\u00a0% softer or 15\u00a0% firmer. Cue ball stops give or take 14 cm. The speed leaves little room',
    );
  });

  it('share no reason with a way that nothing makes hard', () => {
    const easy = { ...WAY, chance: 0.95 };
    expect(sharedReason([WAY, WAY, easy])).toBeNull();
    expect(rowLine(easy, null, 'figures', inCm)).not.toContain('little room');
  });

  it('say every reason in its row where most have one of their own', () => {
    expect(sharedReason([WAY, BY_SPEED])).toBeNull();
    expect(sharedReason([WAY])).toBeNull();
    expect(rowLine(WAY, null, 'figures', inCm)).toMatch(/\. The aim leaves little room/);
  });

  it('tell room for the speed only where there is little of it', () => {
    const ample = (speedMps: ReturnType<typeof room>) =>
      rowLine(
        { ...WAY, windows: WAY.windows && { ...WAY.windows, speedMps } },
        AIM,
        'figures',
        inCm,
      );
    expect(ample(room(1.7, 5))).toBe(
      'Hit no more than 15\u00a0% softer. Cue ball stops give or take 14 cm',
    );
    expect(ample(room(0.8, 5))).toBe('Cue ball stops give or take 14 cm');
  });

  it('put the chance to go second where there is a zone', () => {
    expect(rowLine({ ...WAY, goodPosition: 0.25 }, AIM, 'figures', inCm)).toMatch(
      /^The pot alone: 4 in 10\. Hit no more/,
    );
  });

  it('say the reason alone where nothing more is known', () => {
    const bare = { ...WAY, windows: null, rest: { ...WAY.rest, places: [] } };
    expect(rowLine(bare, null, 'figures', inCm)).toBe('The aim leaves little room');
  });
});

describe('words for how easy a way is beside the easiest', () => {
  // By how much less it goes of all strokes, and of the strokes with which the easiest goes.
  it.each([
    [0.6, 0.6, 'easiest'],
    [0.57, 0.6, 'about as easy'],
    [0.53, 0.6, 'harder'],
    [0.42, 0.6, 'much harder'],
    // Two in a hundred are nothing, though a seventh of what goes at all.
    [0.12, 0.14, 'about as easy'],
    [0.09, 0.14, 'much harder'],
    [0.95, 0.99, 'about as easy'],
  ])('%d beside %d is %s', (share, easiest, words) => {
    expect(easeBeside(share, easiest)).toBe(words);
  });
});

describe('words for how far a chance may be off', () => {
  it('count in 10, and say nothing where both ends are the same', () => {
    expect(rangeLine({ low: 0.28, high: 0.51 }, 'you')).toBe(
      'For you 3 to 5 in 10, as far as is known.',
    );
    expect(rangeLine({ low: 0.28, high: 0.31 }, 'you')).toBe('');
  });
});
