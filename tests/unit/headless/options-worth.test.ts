import { describe, expect, it } from 'vitest';
import { answerOptions } from '../../../src/headless/options-answer';
import { answerPlay } from '../../../src/headless/play-answer';

const ask = (fields: object) => JSON.parse(answerOptions(JSON.stringify(fields), 1));
const SEARCH_TIMEOUT_MS = 300_000;

/** Invented. */
const REQUEST = {
  id: 'worth',
  table: { lengthM: 2.54, widthM: 1.27 },
  balls: [
    { name: 'cue', xM: -0.25, yM: -0.45 },
    { name: 2, xM: 0.3, yM: 0.8 },
    { name: 11, xM: 0.2, yM: -0.12 },
  ],
  legal: 'lowest',
};

interface Told {
  readonly kind: string;
  readonly worth: number;
  readonly chance: { readonly share: number };
  readonly [field: string]: unknown;
}

const kindsOf = (ways: readonly Told[]) => new Set(ways.map(({ kind }) => kind));

describe('what ways are worth', { timeout: SEARCH_TIMEOUT_MS }, () => {
  const both = { ...REQUEST, kinds: ['direct', 'safety'] };
  const byWorth: readonly Told[] = ask(both).ways;
  const byGoes: readonly Told[] = ask({ ...both, order: 'goes' }).ways;

  it('orders them, safeties among them, where the whole table is asked about', () => {
    const worths = byWorth.map(({ worth }) => worth);
    expect(worths).toEqual([...worths].sort((a, b) => b - a));
    expect([...kindsOf(byWorth)].sort()).toEqual(['direct', 'safety']);
    for (const worth of worths) {
      expect(worth).toBeGreaterThanOrEqual(0);
      expect(worth).toBeLessThanOrEqual(1);
    }
  });

  it('gives way to how often they go where that is asked for, safeties last', () => {
    const pots = byGoes.filter(({ kind }) => kind !== 'safety');
    expect(byGoes.slice(0, pots.length)).toEqual(pots);
    const chances = pots.map(({ chance, clean }) => chance.share * Number(clean));
    expect(chances).toEqual([...chances].sort((a, b) => b - a));
    expect(byGoes.length).toBeGreaterThan(pots.length);
  });

  it('is told with what comes after and what a miss leaves', () => {
    for (const way of byWorth.filter(({ kind }) => kind === 'direct')) {
      expect(way.struck).toBeNull();
      expect(way.miss).toMatchObject({ theirBest: expect.any(Number), foul: expect.any(Number) });
      expect(way.after).toMatchObject({ ball: 11, chance: expect.any(Number) });
    }
  });

  it('has safeties that hit a legal ball first when played as they are told', () => {
    const safeties = byWorth.filter(({ kind }) => kind === 'safety');
    expect(safeties.length).toBeGreaterThan(0);
    for (const safety of safeties) {
      expect(safety).toMatchObject({ ball: null, pocket: null, shot: null, after: null });
      expect(safety.struck).toMatchObject({ ball: 2, rest: { sdM: expect.any(Number) } });
      const { headingDeg, side, height, elevationDeg, speedMps } = safety;
      const stroke = { headingDeg, side, height, elevationDeg, speedMps };
      const { table, balls } = REQUEST;
      const play = JSON.parse(answerPlay(JSON.stringify({ table, balls, stroke }), 1));
      const hit = play.events.find(({ kind }: { kind: string }) => kind === 'hits-ball');
      expect([hit.ball, hit.other]).toEqual(['cue', 2]);
    }
  });

  it('refuses an order that there is not', () => {
    expect(ask({ ...REQUEST, order: 'luck' })).toMatchObject({ ok: false, field: 'order' });
  });
});
