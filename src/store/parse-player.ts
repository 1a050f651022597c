import { isWithin } from '../engine/numerics/range';
import type { ParsedRow } from './contents';
import { freshId } from './fresh-id';
import { isFlag, isTime } from './known-values';
import { isPlainObject, mendLine, mendObject, mendUnless } from './mend';
import { LONGEST_NAME, parseWithId } from './parse-named';
import type { Player } from './player';
import { MADE_RANGE } from './record-ranges';

/** What the first player is called, until somebody says otherwise. */
const FIRST_NAME = 'You';

/** A player of whom nothing is known. */
export function newPlayer(id: string, name: string, atMs: number): Player {
  return { id, name, madeOf10: null, wasAsked: false, createdAtMs: atMs, changedAtMs: atMs };
}

/** Who plays on a new device. No two devices have the same one: logs of students come together. */
export function firstPlayer(): Player {
  return newPlayer(freshId(), FIRST_NAME, 0);
}

/**
 * Up to version 4 of the database a desk named one of three invented players. The answer to the
 * question after which it goes about as often as for each of them.
 */
export const FORMER_MADE: Readonly<Record<string, number>> = { steady: 10, club: 8, beginner: 1 };

/** Who stands where a desk's invented player stood; null where it is no desk of that time. */
export function playerOfFormerDesk(desk: unknown): Player | null {
  if (!isPlainObject(desk) || 'playerId' in desk) return null;
  const name = typeof desk.player === 'string' ? desk.player : '';
  const madeOf10 = Object.hasOwn(FORMER_MADE, name) ? FORMER_MADE[name] : FORMER_MADE.club;
  return { ...firstPlayer(), madeOf10: madeOf10 ?? null };
}

/** Such a desk with that player in play. */
export function withPlayer(desk: unknown, { id }: Player): unknown {
  if (!isPlainObject(desk)) return desk;
  const { player: _name, ...rest } = desk;
  return { ...rest, playerId: id };
}

const isMade = (was: unknown): was is number | null =>
  was === null || (Number.isInteger(was) && isWithin(MADE_RANGE, was));

/** A valid player out of anything found among them. An answer that cannot be one was never given. */
export function parsePlayer(raw: unknown): ParsedRow<Player> {
  return parseWithId('players', raw, (_row, id) =>
    mendObject<Player>({
      id: () => id,
      name: mendLine(LONGEST_NAME, 'Player without a name'),
      madeOf10: mendUnless(isMade, null),
      wasAsked: mendUnless(isFlag, false),
      createdAtMs: mendUnless(isTime, 0),
      changedAtMs: mendUnless(isTime, 0),
    }),
  );
}
