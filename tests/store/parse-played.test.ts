import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findKitProblem } from '../../src/engine/kit/kit-numbers';
import { parsePlayed } from '../../src/store/parse-played';
import { damage } from './damaged-rows';
import { DRILL_SHOT, LAID_SHOT, PLAIN_SHOT } from './invented-players';

const RUNG = DRILL_SHOT.drill?.rung;
const REST = RUNG?.rest;

/** The shot that a row amounts to, and the fields that were mended. */
function parsed(raw: unknown) {
  const result = parsePlayed(raw);
  if (!result.ok) throw new Error(result.reason);
  return { shot: result.record, fields: result.repairs.map(({ field }) => field) };
}

const without = (row: object, ...names: readonly string[]) =>
  Object.fromEntries(Object.entries(row).filter(([name]) => !names.includes(name)));

describe('parsing a played shot', () => {
  it('leaves a sound one as it is, with what a newer version stored', () => {
    const newer = { ...PLAIN_SHOT, mood: 'tired', kit: { ...PLAIN_SHOT.kit, chalk: 'green' } };
    for (const shot of [LAID_SHOT, PLAIN_SHOT, newer]) {
      expect(parsed(shot)).toEqual({ shot, fields: [] });
    }
  });

  it.each<[string, object]>([
    ['no player', { playerId: 7 }],
    ['no shot', { shot: without(LAID_SHOT.shot, 'speedMps') }],
    ['a speed no cue gives', { shot: { ...LAID_SHOT.shot, speedMps: 40 } }],
    ['an aim straight back', { aimRad: 3 }],
    ['a target of no kind', { target: { kind: 'hoop' } }],
    ['a mouth narrower than the ball', { target: { kind: 'mouth', distanceM: 1, mouthM: 0.05 } }],
    ['no openings in their list', { target: { ...LAID_SHOT.target, openings: [] } }],
    ['a mass ratio below all cues', { kit: { ...LAID_SHOT.kit, massRatio: 0 } }],
    ['friction that is no curve', { kit: { ...LAID_SHOT.kit, ballFriction: 0.06 } }],
    ['no kit', { kit: null }],
    ['a spread below none', { spread: { ...LAID_SHOT.spread, massRatio: -1 } }],
    ['a result nobody knows', { result: 'nearly' }],
  ])('is beyond repair with %s', (_, part) => {
    expect(parsePlayed({ ...LAID_SHOT, ...part })).toEqual({ ok: false, reason: 'unreadable' });
  });

  it.each<[string, unknown, unknown]>([
    ['atMs', -1, 0],
    ['modelVersion', 'new', 1],
    ['position', { ...LAID_SHOT.position, balls: 'two' }, null],
    ['position', { ...LAID_SHOT.position, stroke: {} }, null],
    ['scratched', 'yes', false],
    ['cueBall', { x: 9, y: 0 }, null],
    ['testId', 7, null],
    ['drill', { id: 'line' }, null],
    ['drill', { id: '', rung: null }, null],
    ...[{ chance: 1.5 }, { stopped: 'far' }, { rest: null }, { rest: { ...REST, low: 0.2 } }].map(
      (part): [string, unknown, unknown] => [
        'drill',
        { id: 'speed', rung: { ...RUNG, ...part } },
        null,
      ],
    ),
    // Nothing is learnt from one that may not have been struck as meant.
    ['asMeant', undefined, false],
  ])('has of its %s no more than was said', (field, was, now) => {
    const { shot, fields } = parsed({ ...LAID_SHOT, [field]: was });
    expect(shot).toEqual({ ...LAID_SHOT, [field]: now });
    expect(fields).toEqual([field]);
  });

  it('is no practice where it is older than that, and keeps what it practised', () => {
    const { shot, fields } = parsed(without(LAID_SHOT, 'drill'));
    expect([shot, fields]).toEqual([LAID_SHOT, []]);
    expect(parsed(DRILL_SHOT)).toEqual({ shot: DRILL_SHOT, fields: [] });
  });

  it('has the usual number of what kits did not have at the time', () => {
    const kit = without(LAID_SHOT.kit, 'cushion', 'bedRestitution');
    const spread = without(LAID_SHOT.spread, 'cushionFriction');
    const { shot, fields } = parsed({ ...LAID_SHOT, kit, spread });
    expect(fields).toEqual([]);
    expect(findKitProblem(shot.kit)).toBeNull();
    expect(shot.kit).toEqual(LAID_SHOT.kit);
    expect(shot.spread).toEqual(LAID_SHOT.spread);
  });

  it('gives a shot the engine takes, or none, of anything at all', () => {
    fc.assert(
      fc.property(damage(LAID_SHOT), (raw) => {
        const result = parsePlayed(raw);
        if (!result.ok) return;
        expect(findKitProblem(result.record.kit)).toBeNull();
        expect(parsed(result.record)).toEqual({ shot: result.record, fields: [] });
      }),
      { numRuns: 300 },
    );
  });
});
