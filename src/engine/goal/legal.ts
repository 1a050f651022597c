import type { BallName, Position } from '../lie/position';

/**
 * What may be touched first: any ball, the one with the lowest number, a group (the eight, once that
 * is gone), or balls picked. A plain rule of the position, and no rule book.
 */
export type LegalRule = 'any' | 'lowest' | 'low' | 'high' | readonly number[];

const EIGHT = 8;

/** What a rule makes of a position. */
export interface Legal {
  /** What the cue ball may touch first. */
  readonly first: readonly number[];
  /** What may fall. */
  readonly falls: readonly number[];
}

/** What may be touched first and what may fall, of the balls that lie on the table. */
export function legalOf(rule: LegalRule, position: Position): Legal {
  const all = position
    .map(({ name }) => name)
    .filter(isNumber)
    .sort((a, b) => a - b);
  if (rule === 'any') return { first: all, falls: all };
  if (rule === 'lowest') return { first: all.slice(0, 1), falls: all };
  if (rule !== 'low' && rule !== 'high') {
    return { first: all.filter((ball) => rule.includes(ball)), falls: all };
  }
  const group = all.filter((ball) => (rule === 'low' ? ball < EIGHT : ball > EIGHT));
  const own = group.length > 0 ? group : all.filter((ball) => ball === EIGHT);
  return { first: own, falls: own };
}

function isNumber(name: BallName): name is number {
  return name !== 'cue';
}
