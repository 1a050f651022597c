import { describe, expect, it } from 'vitest';
import { answerOptions } from '../../../src/headless/options-answer';
import { answerPlay } from '../../../src/headless/play-answer';
import { whatLedTo } from '../../harness/told-events';

const ask = (fields: object) => JSON.parse(answerOptions(JSON.stringify(fields), 1));
const SEARCH_TIMEOUT_MS = 300_000;

/** Invented. */
const REQUEST = {
  id: 'all',
  table: { lengthM: 2.54, widthM: 1.27 },
  balls: [
    { name: 'cue', xM: -0.25, yM: -0.45 },
    { name: 2, xM: 0.3, yM: 0.8 },
    { name: 11, xM: 0.2, yM: -0.12 },
  ],
};

interface Told {
  readonly kind: string;
  readonly ball: number;
  readonly pocket: string;
  readonly via: readonly object[];
  readonly chance: { readonly share: number };
  readonly [field: string]: unknown;
}

describe('all ways to play a position', { timeout: SEARCH_TIMEOUT_MS }, () => {
  const answer = ask({ ...REQUEST, most: 8, order: 'goes' });
  const ways: readonly Told[] = answer.ways;

  it('come where nothing is picked, the best of each kind among them', () => {
    expect(answer).toMatchObject({ id: 'all', ok: true, shot: null });
    expect(answer.unknown).toBeUndefined();
    expect(ways.length).toBeLessThanOrEqual(8);
    const kinds = new Set(ways.map(({ kind }) => kind));
    const without = answer.none.map(({ kind }: { kind: string }) => kind);
    expect([...kinds, ...without].sort()).toEqual([
      'bank',
      'carom',
      'combination',
      'direct',
      'kick',
    ]);
  });

  it('have a straight shot only where one is meant', () => {
    for (const way of ways) {
      expect(way.shot === null).toBe(way.kind !== 'direct');
      expect(way.aimAngleDeg === null).toBe(way.kind !== 'direct');
      expect(way.doubleKiss).toBeTypeOf('boolean');
    }
  });

  it('are played by the other door as they are told', () => {
    for (const { headingDeg, side, height, elevationDeg, speedMps, ball, pocket, via } of ways) {
      const stroke = { headingDeg, side, height, elevationDeg, speedMps };
      const play = JSON.parse(answerPlay(JSON.stringify({ ...REQUEST, stroke }), 1));
      const { outcome } = play.balls.find(({ name }: { name: unknown }) => name === ball);
      expect(outcome).toMatchObject({ kind: 'pocketed', pocket });
      expect(whatLedTo(ball, play.events)).toEqual(via);
    }
  });

  it('go by what may be hit first, by the ball, the pocket and the kinds', () => {
    const picked = ask({
      ...REQUEST,
      legal: 'high',
      kinds: ['bank'],
      play: { pocket: 'far-left' },
    });
    expect(picked.ways.length).toBeGreaterThan(0);
    for (const way of picked.ways) {
      expect(way).toMatchObject({ kind: 'bank', ball: 11, pocket: 'far-left' });
      expect(way.via[0]).toEqual({ ball: 11, by: 'cue' });
    }
  });

  it('say why there are none, kind by kind', () => {
    const none = ask({ ...REQUEST, legal: 'low', play: { ball: 11 }, kinds: ['kick', 'carom'] });
    expect(none).toMatchObject({ ok: true, ways: [], compared: 0 });
    expect(none.none.map(({ kind }: { kind: string }) => kind)).toEqual(['kick', 'carom']);
    expect(none.message).toBe('No ball that may be hit first, or may fall, is on the table.');
  });
});

describe('what may be played', () => {
  const field = (changed: object) => ask({ ...REQUEST, ...changed }).field;

  it('is refused by its field where it means nothing', () => {
    expect(field({ legal: 'nine' })).toBe('legal');
    expect(field({ legal: [] })).toBe('legal');
    expect(field({ legal: [0] })).toBe('legal');
    expect(field({ legal: [1.5] })).toBe('legal');
    expect(field({ legal: [[1]] })).toBe('legal');
    expect(field({ legal: null })).toBe('legal');
    expect(field({ kinds: [] })).toBe('kinds');
    expect(field({ kinds: 'bank' })).toBe('kinds');
    expect(field({ kinds: ['bank', 'jump'] })).toBe('kinds');
    expect(field({ play: { ball: 'nine' } })).toBe('play.ball');
    expect(field({ play: { ball: null } })).toBe('play.ball');
    expect(field({ play: { pocket: 'top' } })).toBe('play.pocket');
    expect(field({ play: 3 })).toBe('play');
    expect(field({ most: 25 })).toBe('most');
  });

  it('is refused by its reason where the balls lie so that nothing can be', () => {
    const reason = (changed: object) => ask({ ...REQUEST, ...changed }).reason;
    const more = (xM: number, yM: number) => [...REQUEST.balls, { name: 5, xM, yM }];
    expect(reason({ play: { ball: 9 } })).toBe('no-such-ball');
    expect(reason({ balls: more(0.3, 0.81) })).toBe('overlap');
    expect(reason({ balls: more(2, 0) })).toBe('off-bed');
    expect(
      reason({ kit: { rollFriction: 0.002, bedSlope: { alongM_per_M: 0.005, rightM_per_M: 0 } } }),
    ).toBe('never-stops');
  });
});
