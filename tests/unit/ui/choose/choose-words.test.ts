import { signal } from '@preact/signals';
import { describe, expect, it } from 'vitest';
import type { PositionShot } from '../../../../src/engine/goal/position-shot';
import type { Neighbour } from '../../../../src/engine/lie/neighbours';
import type { WhyNot } from '../../../../src/engine/plan/pocket-chances';
import { NOTHING_CHOSEN } from '../../../../src/store/saved-position';
import { besideWords } from '../../../../src/ui/choose/beside-words';
import { boardWords } from '../../../../src/ui/choose/board-words';
import { pocketTold, tenthsWords } from '../../../../src/ui/choose/pocket-words';
import { goalWords, hindranceLines, lieWords } from '../../../../src/ui/choose/shot-words';
import { percentWords, spotWords } from '../../../../src/ui/choose/table-words';
import { inventedChoose } from './invented-choose';

const NINE_FOOT = { lengthM: 2.54, widthM: 1.27 };

const SHOT: PositionShot = {
  ok: true,
  distanceM: 0.84,
  cutRad: (31 * Math.PI) / 180,
  headingRad: 0,
  ghost: { xM: 0, yM: 0 },
  target: { kind: 'mouth', distanceM: 1, mouthM: 0.1 },
  inTheWay: [],
  least: { elevationRad: 0.05, over: 'nothing' },
  bridge: 'on-the-bed',
};

describe('words for a table', () => {
  it('tell a spot in diamonds from the break end and from the left', () => {
    // Eight diamonds along, four across; the origin is the middle.
    expect(spotWords({ xM: 0, yM: 0 }, NINE_FOOT)).toBe('4.0 diamonds along, 2.0 from the left');
    expect(spotWords({ xM: 0.3175, yM: -1.27 }, NINE_FOOT)).toBe(
      '0.0 diamonds along, 3.0 from the left',
    );
  });

  it.each([
    [0, '0\u00a0%'],
    [0.004, 'under 1\u00a0%'],
    [0.414, '41\u00a0%'],
    [1, '100\u00a0%'],
  ])('tell a share of %d as %s', (share, words) => {
    expect(percentWords(share)).toBe(words);
  });
});

describe('words for what lies beside a ball', () => {
  const near = (what: Neighbour['what'], gapM: number) => ({ what, gapM, isFrozen: gapM === 0 });

  it.each([
    [[], 'mm', ''],
    [[near(4, 0), near(9, 0.01)], 'mm', 'frozen to the 4'],
    [[near('cue', 0), near('cushion', 0)], 'mm', 'frozen to the cue ball and the cushion'],
    [[near(4, 0.0021), near('cushion', 0.02)], 'mm', '2 mm from the 4'],
    [[near(4, 0.0021)], 'cm', '0.2 cm from the 4'],
    [[near(4, 0.0254)], 'in', '1.00 in from the 4'],
    [[near('cushion', 0.0004)], 'mm', '0.4 mm from the cushion'],
    [[near('cushion', 0.0004)], 'in', '0.016 in from the cushion'],
    [[near(4, 0.3)], 'mm', ''],
  ] as const)('%j in %s: %s', (nearestFirst, unit, words) => {
    expect(besideWords(nearestFirst, unit)).toBe(words);
  });
});

describe('words for what is played', () => {
  it.each([
    [null, null, 'No ball and pocket chosen yet'],
    [3, null, 'The 3: into which pocket?'],
    [null, 'far-right', 'Into the far right pocket: which ball?'],
    [3, 'far-right', 'The 3 into the far right pocket'],
  ] as const)('ball %s, pocket %s: %s', (ball, pocket, words) => {
    expect(goalWords({ ...NOTHING_CHOSEN, ball, pocket })).toBe(words);
  });

  it('tell how it lies, left and right by word and arrow', () => {
    const metres = { distanceUnit: 'm' } as const;
    expect(lieWords(SHOT, metres, 2.54)).toBe('cut 31° → right, 0.84 m to the ghost ball');
    expect(lieWords({ ...SHOT, cutRad: -0.5 }, metres, 2.54)).toContain('29° ← left');
    expect(lieWords({ ...SHOT, cutRad: 0 }, metres, 2.54)).toContain('straight');
  });

  it('tell what stands against it', () => {
    expect(hindranceLines(SHOT, 3)).toEqual([]);
    const hindered: PositionShot = {
      ...SHOT,
      inTheWay: [
        { mover: 'cue', what: 8 },
        { mover: 'object', what: 'jaw' },
      ],
      least: { elevationRad: (6 * Math.PI) / 180, over: 'cushion' },
      bridge: 'nowhere',
    };
    expect(hindranceLines(hindered, 3)).toEqual([
      'The 8 is in the way of the cue ball.',
      'The point of the pocket is in the way of the 3.',
      'Cue raised 6° or more, over the cushion.',
      'There is no room for a bridge hand.',
    ]);
  });
});

describe('what is told of a pocket', () => {
  it('is so many in ten, or a word where they are nearly none or all', () => {
    const told = [0.04, 0.06, 0.44, 0.6, 0.949, 0.96].map((share) => tenthsWords(share, 'figures'));
    expect(told).toEqual(['rarely', '1 in 10', '4 in 10', '6 in 10', '9 in 10', 'nearly all']);
    expect(tenthsWords(0.6, 'ease')).toBe('fair');
  });

  it('is why it does not go', () => {
    const why = (one: WhyNot) => {
      const chances = new Map([
        ['far-left', { pocket: 'far-left', share: null, why: one }],
      ] as const);
      return pocketTold(
        { closed: signal(new Map()), chances: signal(chances) },
        'far-left',
        'ease',
      );
    };
    expect(why({ reason: 'in-the-way', what: 9 })).toEqual({
      words: '9 in the way',
      isClosed: true,
    });
    expect(why({ reason: 'in-the-way', what: 'jaw' })?.words).toBe('blocked');
    expect(why({ reason: 'not-reached' })?.words).toBe('falls short');
  });

  it('is in the words of the drawing', () => {
    const told = new Map([['far-left', { words: '6 in 10', isClosed: false }]] as const);
    expect(boardWords(inventedChoose().choose, 'm', told)).toContain('Far left pocket 6 in 10');
  });
});

describe('the drawing in words', () => {
  it('tells balls, what is played and the zone', () => {
    const { choose } = inventedChoose();
    const words = boardWords(choose, 'm', new Map());
    expect(words).toContain('Cue ball 2.4 diamonds along, 1.1 from the left');
    expect(words).toContain('12 ball');
    expect(words).toContain('The 11 is frozen to the 12');
    expect(words).toContain('The 3 into the far right pocket');
    expect(words).toContain(
      'Zone for the cue ball 3.4 diamonds along, 1.4 from the left, 0.50 m across',
    );
    expect(boardWords(choose, 'in', new Map())).toContain(', 20 in across');
  });

  it('tells the fan of the way that is looked at', async () => {
    const { choose } = inventedChoose();
    choose.compare();
    await expect.poll(() => choose.comparison.value.state).toBe('done');
    choose.choose(choose.comparison.value.ways[0] ?? null);
    await expect.poll(() => choose.fan.value.length).toBe(5);
    expect(boardWords(choose, 'm', new Map())).toMatch(
      /Where the cue ball rests, in diamonds: true: /,
    );
  });
});
