import { describe, expect, it } from 'vitest';
import { DEFAULT_KIT } from '../../src/engine/kit/kit';
import { DEFAULT_CHOICE, DEFAULT_DESK, DEFAULT_SHOT } from '../../src/store/default-desk';
import { DEMO_CATALOGUE } from '../../src/store/demo-catalogue';
import { kitOf } from '../../src/store/kit-of';
import { parseDesk } from '../../src/store/parse-desk';
import { parseRecord } from '../../src/store/parse-record';
import { SHELF_NAMES, type ShelfName, type Shelves } from '../../src/store/records';
import { kitProblemOf, shotProblemsOf } from './engine-accepts';

const everything = SHELF_NAMES.flatMap((shelf) =>
  DEMO_CATALOGUE[shelf].map((record) => [record.id, shelf, record] as const),
);

/** The spreads in which a table's numbers lie, from the literature (mostly from memory). */
const SPREADS: readonly [ShelfName, string, number, number][] = [
  ['cues', 'massRatio', 12, 50],
  ['cues', 'tipDiameterM', 0.0118, 0.013],
  ['cues', 'tipRadiusM', 0.009, 0.011],
  ['cloths', 'slideFriction', 0.15, 0.4],
  ['cloths', 'rollFriction', 0.005, 0.016],
  ['cloths', 'spinDecayRadS2', 5, 22],
  ['cloths', 'bedRestitution', 0.4, 0.7],
  ['balls', 'ballRestitution', 0.92, 0.98],
  ['balls', 'cueBallMassRatio', 1, 1.1],
];

function onShelf<S extends ShelfName>(shelf: S, id: string): Shelves[S] {
  const record = DEMO_CATALOGUE[shelf].find((candidate) => candidate.id === id);
  if (!record) throw new Error(`${id} is not in the demo catalogue`);
  return record;
}

describe('the demo catalogue', () => {
  it.each(everything)(
    '%s says that it is invented, and the engine takes it',
    (_, shelf, record) => {
      expect(record.origin).toBe('invented');
      expect(kitProblemOf(shelf, record)).toBeNull();
    },
  );

  it.each(everything)('%s needs no mending', (_, shelf, record) => {
    expect(parseRecord(shelf, record)).toEqual({ ok: true, record, repairs: [] });
  });

  it('has no id twice', () => {
    const ids = everything.map(([id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('keeps the ids that saved desks refer to', () => {
    expect(everything.map(([id]) => id)).toEqual([
      'demo-cue-stiff',
      'demo-cue-house',
      'demo-cue-low',
      'demo-cue-very-low',
      'demo-cloth-fast',
      'demo-cloth-club',
      'demo-cloth-worn',
      'demo-balls-clean',
      'demo-balls-dirty',
      'demo-balls-heavy-cue-ball',
      'demo-table-7ft-76',
      'demo-table-7ft-78',
      'demo-table-8ft',
      'demo-table-9ft',
    ]);
  });

  it.each(SPREADS)('%s stay within the spread of %s', (shelf, field, least, most) => {
    for (const record of DEMO_CATALOGUE[shelf]) {
      const value: unknown = Reflect.get(record, field);
      expect(value).toBeGreaterThanOrEqual(least);
      expect(value).toBeLessThanOrEqual(most);
    }
  });

  it('has dirty balls that rub harder than clean ones at every speed', () => {
    const { ballFriction: clean } = onShelf('balls', 'demo-balls-clean');
    const { ballFriction: dirty } = onShelf('balls', 'demo-balls-dirty');
    for (const u of [0, 0.5, 2, 10]) {
      const rub = ({ a, b, c }: typeof clean) => a + b * Math.exp(-c * u);
      expect(rub(dirty)).toBeGreaterThan(rub(clean));
    }
  });

  it('has tables twice as long as wide, of the lengths people know', () => {
    for (const table of DEMO_CATALOGUE.tables) {
      expect(table.lengthM / table.widthM).toBeCloseTo(2, 2);
    }
    const lengthsIn = DEMO_CATALOGUE.tables.map(({ lengthM }) => Math.round(lengthM / 0.0254));
    expect(lengthsIn).toEqual([76, 78, 92, 100]);
  });
});

describe('the default desk', () => {
  it('plays with the default kit', () => {
    const kit = kitOf(
      onShelf('cues', DEFAULT_CHOICE.cues),
      onShelf('cloths', DEFAULT_CHOICE.cloths),
      onShelf('balls', DEFAULT_CHOICE.balls),
      onShelf('tables', DEFAULT_CHOICE.tables),
    );
    expect(kit).toEqual(DEFAULT_KIT);
  });

  it('asks a shot the engine takes, with outside side on a cut to the right', () => {
    expect(shotProblemsOf(DEFAULT_SHOT)).toEqual([]);
    expect(DEFAULT_SHOT.cutRad).toBeGreaterThan(0);
    expect(DEFAULT_SHOT.side).toBeLessThan(0);
  });

  it('needs no mending', () => {
    expect(parseDesk(DEFAULT_DESK, { ...DEMO_CATALOGUE, players: [] })).toEqual({
      desk: DEFAULT_DESK,
      repairs: [],
    });
  });
});

describe('the kit of four records', () => {
  it('takes each number from where it belongs', () => {
    const kit = kitOf(
      onShelf('cues', 'demo-cue-low'),
      onShelf('cloths', 'demo-cloth-worn'),
      onShelf('balls', 'demo-balls-heavy-cue-ball'),
      { ...onShelf('tables', 'demo-table-8ft'), bedSlope: { alongM_per_M: 1e-3, rightM_per_M: 0 } },
    );
    expect(kit).toEqual({
      ...DEFAULT_KIT,
      massRatio: 38 * 1.06,
      tipRadiusM: 0.0095,
      slideFriction: 0.3,
      rollFriction: 0.014,
      spinDecayRadS2: 16,
      bedRestitution: 0.45,
      ballRadiusM: 0.028575,
      ballRestitution: 0.95,
      cueBallMassRatio: 1.06,
      bedSlope: { alongM_per_M: 1e-3, rightM_per_M: 0 },
    });
  });
});
