import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { INPUT_RANGES } from '../../src/engine/direct/input-ranges';
import { DEFAULT_DESK, DEFAULT_SHOT } from '../../src/store/default-desk';
import { DEMO_CATALOGUE } from '../../src/store/demo-catalogue';
import { parseDesk } from '../../src/store/parse-desk';
import { SHELF_NAMES } from '../../src/store/records';
import { anything, damage } from './damaged-rows';
import { shotProblemsOf } from './engine-accepts';
import { NEWCOMER, STUDENT } from './invented-players';

const corrupted = fc.oneof(
  anything,
  fc
    .record({
      shot: fc.oneof(anything, damage({ ...DEFAULT_SHOT, objectDistanceM: 1 })),
      heldShot: fc.oneof(anything, damage(DEFAULT_SHOT)),
      choice: fc.oneof(anything, damage(DEFAULT_DESK.choice)),
      preferences: fc.oneof(anything, damage(DEFAULT_DESK.preferences)),
      headingRad: anything,
      recentShots: fc.oneof(anything, fc.array(fc.oneof(anything, damage(DEFAULT_SHOT)))),
    })
    .map((desk): unknown => desk),
  damage(DEFAULT_DESK),
);

/** What is on the shelves of a new device, and two players. */
const CHOSEN_FROM = { ...DEMO_CATALOGUE, players: [STUDENT, NEWCOMER] };

const WORDS = {
  lengthUnit: ['mm', 'cm', 'in'],
  distanceUnit: ['m', 'cm', 'in', 'diamonds', 'table-lengths'],
  distanceFrom: ['ghost-ball', 'ball-to-ball'],
  speedUnit: ['mps', 'kmh', 'mph', 'lengths'],
  cutUnit: ['degrees', 'ball-hit'],
  tipUnit: ['tips', 'clock', 'radii'],
  lead: ['object-ball', 'ghost-ball'],
  hand: ['right', 'left'],
  theme: ['dark', 'light', 'system'],
} as const;

describe('parsing the desk', () => {
  it('gives a desk the app can open with, for anything at all', () => {
    fc.assert(
      fc.property(corrupted, (raw) => {
        const { desk } = parseDesk(raw, CHOSEN_FROM);
        expect(shotProblemsOf(desk.shot)).toEqual([]);
        expect(desk.recentShots.flatMap(shotProblemsOf)).toEqual([]);
        expect(desk.recentShots.length).toBeLessThanOrEqual(12);
        if (desk.heldShot !== null) expect(shotProblemsOf(desk.heldShot)).toEqual([]);
        for (const { headingRad } of [desk.shot, desk.heldShot ?? desk.shot]) {
          expect(headingRad === null || Math.abs(headingRad) <= 2 * Math.PI).toBe(true);
        }
        for (const shelf of SHELF_NAMES) {
          expect(DEMO_CATALOGUE[shelf].map(({ id }) => id)).toContain(desk.choice[shelf]);
        }
        for (const [name, words] of Object.entries(WORDS)) {
          expect(words).toContain(Reflect.get(desk.preferences, name));
        }
      }),
      { numRuns: 1000 },
    );
  });

  it('finds nothing to mend in what it has mended', () => {
    fc.assert(
      fc.property(corrupted, (raw) => {
        const { desk } = parseDesk(raw, CHOSEN_FROM);
        expect(parseDesk(desk, CHOSEN_FROM)).toEqual({ desk, repairs: [] });
      }),
    );
  });

  it.each([
    ['distanceM', -1, INPUT_RANGES.distanceM.min],
    ['cutRad', 9, INPUT_RANGES.cutRad.max],
    ['side', -3, -1],
    ['elevationRad', -0.1, 0],
    ['speedMps', 99, INPUT_RANGES.speedMps.max],
    ['height', Number.NaN, DEFAULT_SHOT.height],
    ['distanceM', 'far', DEFAULT_SHOT.distanceM],
  ])('mends a shot with %s of %s to %s and tells of it', (name, was, now) => {
    const raw = { ...DEFAULT_DESK, shot: { ...DEFAULT_SHOT, [name]: was } };
    const { desk, repairs } = parseDesk(raw, CHOSEN_FROM);
    expect(Reflect.get(desk.shot, name)).toBe(now);
    expect(repairs).toEqual([{ store: 'desk', id: 'desk', field: `shot.${name}`, was, now }]);
  });

  it('opens a desk from before headings and recent shots were kept', () => {
    const { recentShots: _recent, law: _law, ...rest } = DEFAULT_DESK;
    const { headingRad: _heading, ...shot } = DEFAULT_SHOT;
    const older = { ...rest, shot };
    // Nobody has been told yet of laws that have changed since.
    const desk = { ...DEFAULT_DESK, law: 1 };
    expect(parseDesk(older, CHOSEN_FROM)).toEqual({ desk, repairs: [] });
  });

  it.each([
    [1.5, 1.5, 0],
    [null, null, 0],
    [7, null, 2],
    ['north', null, 2],
  ])('reads a heading of %s, which is never moved into range', (headingRad, now, repairs) => {
    const laid = { ...DEFAULT_SHOT, headingRad };
    const parsed = parseDesk({ ...DEFAULT_DESK, shot: laid, heldShot: laid }, CHOSEN_FROM);
    expect(parsed.desk.shot.headingRad).toBe(now);
    expect(parsed.desk.heldShot?.headingRad).toBe(now);
    const fields = ['shot.headingRad', 'heldShot.headingRad'];
    expect(parsed.repairs.map(({ field }) => field)).toEqual(fields.slice(0, repairs));
  });

  it('takes no heading from beside the shot, where it may be that of another', () => {
    const { headingRad: _heading, ...shot } = DEFAULT_SHOT;
    for (const headingRad of [1.5, null, 'north']) {
      const older = { ...DEFAULT_DESK, shot, heldShot: shot, headingRad };
      const desk = { ...DEFAULT_DESK, heldShot: DEFAULT_SHOT };
      expect(parseDesk(older, CHOSEN_FROM)).toEqual({ desk, repairs: [] });
    }
  });

  it('mends recent shots one by one and drops what is none', () => {
    const recentShots = [DEFAULT_SHOT, 'a shot', { ...DEFAULT_SHOT, side: 4 }, {}, null];
    const { desk, repairs } = parseDesk({ ...DEFAULT_DESK, recentShots }, CHOSEN_FROM);
    expect(desk.recentShots).toEqual([DEFAULT_SHOT, { ...DEFAULT_SHOT, side: 1 }]);
    expect(repairs.map(({ field }) => field)).toEqual([
      'recentShots.1',
      'recentShots.2.side',
      'recentShots.3',
      'recentShots.4',
    ]);
  });

  it('keeps the twelve newest of too many recent shots', () => {
    const recentShots = Array.from({ length: 15 }, (_, n) => ({ ...DEFAULT_SHOT, side: n / 20 }));
    const { desk, repairs } = parseDesk({ ...DEFAULT_DESK, recentShots }, CHOSEN_FROM);
    expect(desk.recentShots).toEqual(recentShots.slice(0, 12));
    expect(repairs.map(({ now }) => now)).toEqual([undefined, undefined, undefined]);
  });

  it('leaves out a distance for the object ball that cannot be read', () => {
    const raw = { ...DEFAULT_DESK, shot: { ...DEFAULT_SHOT, objectDistanceM: 'far' } };
    const { desk, repairs } = parseDesk(raw, CHOSEN_FROM);
    expect(desk.shot).toEqual(DEFAULT_SHOT);
    expect(repairs.map(({ field }) => field)).toEqual(['shot.objectDistanceM']);
  });

  it('keeps a good distance for the object ball, and takes a bad one to its bound', () => {
    const withDistance = (objectDistanceM: number) =>
      parseDesk({ ...DEFAULT_DESK, shot: { ...DEFAULT_SHOT, objectDistanceM } }, CHOSEN_FROM);
    expect(withDistance(1.5).desk.shot.objectDistanceM).toBe(1.5);
    expect(withDistance(99).desk.shot.objectDistanceM).toBe(INPUT_RANGES.objectDistanceM.max);
  });

  it('gives way to the default for a unit it does not know', () => {
    const preferences = { ...DEFAULT_DESK.preferences, speedUnit: 'knots', lengthUnit: 'in' };
    const { desk, repairs } = parseDesk({ ...DEFAULT_DESK, preferences }, CHOSEN_FROM);
    expect(desk.preferences).toMatchObject({ speedUnit: 'mps', lengthUnit: 'in' });
    expect(repairs).toEqual([
      { store: 'desk', id: 'desk', field: 'preferences.speedUnit', was: 'knots', now: 'mps' },
    ]);
  });

  it('chooses what is there for what is gone', () => {
    const choice = { ...DEFAULT_DESK.choice, cues: 'sold' };
    const gone = parseDesk({ ...DEFAULT_DESK, choice }, CHOSEN_FROM);
    expect(gone.desk.choice.cues).toBe('demo-cue-house');
    expect(gone.repairs.map(({ field }) => field)).toEqual(['choice.cues']);
    const without = DEMO_CATALOGUE.cues.filter(({ id }) => id !== 'demo-cue-house');
    const shelves = { ...CHOSEN_FROM, cues: without };
    expect(parseDesk(DEFAULT_DESK, shelves).desk.choice.cues).toBe('demo-cue-stiff');
  });

  it('leaves a choice alone whatever the id, as long as it is there', () => {
    const [cue] = DEMO_CATALOGUE.cues;
    if (!cue) throw new Error('no demo cue');
    for (const id of [' ', ' spaced ', '\u0000', 'x'.repeat(200)]) {
      const desk = { ...DEFAULT_DESK, choice: { ...DEFAULT_DESK.choice, cues: id } };
      const shelves = { ...CHOSEN_FROM, cues: [{ ...cue, id }] };
      expect(parseDesk(desk, shelves)).toEqual({ desk, repairs: [] });
    }
  });

  it('keeps fields it does not know, at every depth', () => {
    const raw = {
      ...DEFAULT_DESK,
      place: 'choose',
      shot: { ...DEFAULT_SHOT, cushions: 2 },
      choice: { ...DEFAULT_DESK.choice, stroke: 'mine' },
      preferences: { ...DEFAULT_DESK.preferences, sound: true },
    };
    expect(parseDesk(raw, CHOSEN_FROM)).toEqual({ desk: raw, repairs: [] });
  });
});
