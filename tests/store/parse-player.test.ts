import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parsePlayer, playerOfFormerDesk } from '../../src/store/parse-player';
import { damage } from './damaged-rows';
import { NEWCOMER, STUDENT } from './invented-players';

/** The player that a row amounts to, and the fields that were mended. */
function parsed(raw: unknown) {
  const result = parsePlayer(raw);
  if (!result.ok) throw new Error(result.reason);
  return { player: result.record, fields: result.repairs.map(({ field }) => field) };
}

describe('parsing a player', () => {
  it('leaves a sound one as it is, with what a newer version stored', () => {
    const newer = { ...NEWCOMER, hand: 'left' };
    for (const player of [STUDENT, NEWCOMER, newer]) {
      expect(parsed(player)).toEqual({ player, fields: [] });
    }
  });

  it.each([
    ['not-a-record', 'a player'],
    ['no-id', { ...STUDENT, id: '' }],
  ])('says %s of one beyond repair', (reason, raw) => {
    expect(parsePlayer(raw)).toEqual({ ok: false, reason });
  });

  it.each([11, -1, 6.5, '6', Number.NaN])('takes %s of ten for no answer', (madeOf10) => {
    const { player, fields } = parsed({ ...STUDENT, madeOf10 });
    expect(player).toEqual({ ...STUDENT, madeOf10: null });
    expect(fields).toEqual(['madeOf10']);
  });

  it('gives a player that stands, of anything at all', () => {
    fc.assert(
      fc.property(damage(STUDENT), (raw) => {
        const result = parsePlayer(raw);
        if (!result.ok) return;
        const { madeOf10, name } = result.record;
        expect(madeOf10 === null || (madeOf10 >= 0 && madeOf10 <= 10)).toBe(true);
        expect(name).not.toBe('');
        expect(parsed(result.record)).toEqual({ player: result.record, fields: [] });
      }),
    );
  });
});

describe('the player of a desk from before there were players', () => {
  it.each([
    ['steady', 'better than'],
    ['beginner', 'worse than'],
  ])('makes, where that was the %s one, %s the club player', (name, how) => {
    const made = (player: unknown) => playerOfFormerDesk({ player })?.madeOf10 ?? Number.NaN;
    if (how === 'better than') expect(made(name)).toBeGreaterThan(made('club'));
    else expect(made(name)).toBeLessThan(made('club'));
  });

  it.each([undefined, 7, 'toString', 'somebody'])(
    'is the club player where it says %s',
    (player) => {
      const club = playerOfFormerDesk({ player: 'club' })?.madeOf10;
      expect(playerOfFormerDesk({ player })?.madeOf10).toBe(club);
    },
  );

  it('is nobody where there was no desk, and where it names a player of its own', () => {
    expect(playerOfFormerDesk(undefined)).toBeNull();
    expect(playerOfFormerDesk('scribble')).toBeNull();
    expect(playerOfFormerDesk({ player: 'steady', playerId: '' })).toBeNull();
  });

  it('is another on every device, so that logs of two of them come together', () => {
    const ids = [1, 2].map(() => playerOfFormerDesk({ player: 'steady' })?.id);
    expect(new Set(ids).size).toBe(2);
  });
});
