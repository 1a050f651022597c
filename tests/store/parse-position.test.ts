import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { directCut } from '../../src/engine/goal/goal';
import { EXAMPLE_POSITIONS } from '../../src/store/example-positions';
import { parsePosition } from '../../src/store/parse-position';
import { BANK_POSITION, KEPT_DRILL, LATER_POSITION } from './invented-positions';

/** The position that a row amounts to, and the fields that were mended. */
function parsed(raw: unknown) {
  const result = parsePosition(raw);
  if (!result.ok) throw new Error(result.reason);
  return { position: result.record, fields: result.repairs.map(({ field }) => field) };
}

const CUT = directCut(3, 'far-right');
const [KEPT_TRY] = KEPT_DRILL.drill?.tries ?? [];

describe('parsing a position', () => {
  it.each([...EXAMPLE_POSITIONS, BANK_POSITION, LATER_POSITION, KEPT_DRILL])(
    'leaves a sound one as it is: $name',
    (position) => {
      expect(parsed(position)).toEqual({ position, fields: [] });
    },
  );

  it.each(['any', 'lowest', 'low', 'high', [], [3, 9]])(
    'keeps %j as what may be hit first, and leaves out what was never said',
    (legal) => {
      const ruled = { ...BANK_POSITION, legal };
      expect(parsed(ruled)).toEqual({ position: ruled, fields: [] });
      expect('legal' in parsed(BANK_POSITION).position).toBe(false);
    },
  );

  it.each([['all'], [null], [[16]], [['cue']], [Array.from({ length: 17 }, () => 1)]])(
    'lets any ball be hit first where it says %j',
    (legal) => {
      expect(parsed({ ...BANK_POSITION, legal })).toEqual({
        position: { ...BANK_POSITION, legal: 'any' },
        fields: ['legal'],
      });
    },
  );

  it.each([
    ['no such kind', { kind: 'masse' }],
    ['a step off no rail', { via: [{ cushion: 'top', by: 3 }] }],
    ['a step by no ball', { via: [{ ball: 3, by: 16 }] }],
    ['a stroke that no cue plays', { stroke: { ...KEPT_DRILL.drill?.stroke, speedMps: -1 } }],
    ['a try of nobody', { tries: [{ atMs: 1, went: true }] }],
    ['more tries than are kept', { tries: Array.from({ length: 501 }, () => KEPT_TRY) }],
  ])('is no drill with %s, and else as it was', (_, part) => {
    const damaged = { ...KEPT_DRILL, drill: { ...KEPT_DRILL.drill, ...part } };
    expect(parsed(damaged)).toEqual({
      position: { ...KEPT_DRILL, drill: null },
      fields: ['drill'],
    });
  });

  it('keeps what a newer version stored with it', () => {
    const newer = { ...BANK_POSITION, note: 'left hand' };
    expect(parsed(newer)).toEqual({ position: newer, fields: [] });
  });

  it.each([
    ['not-a-record', 'a position'],
    ['not-a-record', null],
    ['no-id', { ...BANK_POSITION, id: 7 }],
    ['unreadable', { ...BANK_POSITION, balls: undefined }],
  ])('says %s of one beyond repair', (reason, raw) => {
    expect(parsePosition(raw)).toEqual({ ok: false, reason });
  });

  it.each<[string, unknown]>([
    ['a number no ball has', { name: 16, xM: 0, yM: 0 }],
    ['no whole number', { name: 1.5, xM: 0, yM: 0 }],
    ['a name of its own', { name: 'red', xM: 0, yM: 0 }],
    ['no place', { name: 5, xM: 0 }],
    ['a place off any table', { name: 5, xM: 3, yM: 0 }],
    ['a place that is no number', { name: 5, xM: Number.NaN, yM: 0 }],
    ['the name of another', { name: 3, xM: 0, yM: 0 }],
    ['nothing to it', null],
  ])('leaves a ball out that has %s, rather than move it', (_, ball) => {
    const { balls } = BANK_POSITION;
    expect(parsed({ ...BANK_POSITION, balls: [...balls, ball] })).toEqual({
      position: BANK_POSITION,
      fields: ['balls.3'],
    });
  });

  it.each<[string, object, object]>([
    ['goal.ball', { goal: { ...CUT, ball: 'cue' } }, { ball: null }],
    ['goal.pocket', { goal: { ...CUT, pocket: 'top' } }, { pocket: null }],
    ['goal.kind', { goal: { ...CUT, kind: 'masse' } }, CUT],
    ['goal.via', { goal: { ...CUT, via: ['far'] } }, { via: [] }],
    ['goal', { goal: 'the three' }, { ball: null, pocket: null }],
  ])('chooses nothing where %s cannot be read', (field, part, goal) => {
    const { position, fields } = parsed({ ...BANK_POSITION, ...part });
    expect(position.goal).toMatchObject(goal);
    expect(fields).toEqual([field]);
  });

  it('reads what was to be played before there were goals as a direct cut, and mends nothing', () => {
    const { goal: _, ...older } = BANK_POSITION;
    expect(parsed({ ...older, intent: { ball: 3, pocket: 'far-right' } })).toEqual({
      position: { ...older, goal: CUT },
      fields: [],
    });
    expect(parsed({ ...older, intent: { ball: null, pocket: 'far-right' } }).position.goal).toEqual(
      {
        ...CUT,
        ball: null,
      },
    );
    expect(parsed({ ...older, intent: { ball: 'cue', pocket: 'far-right' } }).fields).toEqual([
      'goal.ball',
    ]);
  });

  it('never gives anything but a position, whatever it is given', () => {
    const anyPosition = fc.record(
      {
        id: fc.constant('x'),
        name: fc.anything(),
        origin: fc.anything(),
        lengthM: fc.anything(),
        widthM: fc.oneof(fc.double(), fc.anything()),
        balls: fc.array(fc.oneof(fc.anything(), fc.constantFrom(...BANK_POSITION.balls))),
        goal: fc.oneof(fc.anything(), fc.record({ ball: fc.anything(), pocket: fc.anything() })),
        zone: fc.oneof(fc.anything(), fc.record({ xM: fc.double(), radiusM: fc.double() })),
        changedAtMs: fc.anything(),
      },
      { requiredKeys: ['id', 'balls'] },
    );
    fc.assert(
      fc.property(anyPosition, (raw) => {
        const { position } = parsed(raw);
        expect(parsed(position)).toEqual({ position, fields: [] });
        expect(position.lengthM).toBeGreaterThan(0);
        expect(position.widthM).toBeGreaterThan(0);
        expect(position.name).not.toBe('');
        const names = position.balls.map(({ name }) => name);
        expect(new Set(names).size).toBe(names.length);
        for (const { xM, yM } of position.balls) {
          expect(Math.abs(xM)).toBeLessThanOrEqual(1);
          expect(Math.abs(yM)).toBeLessThanOrEqual(2);
        }
      }),
      { seed: 20261125, numRuns: 300 },
    );
  });
});
