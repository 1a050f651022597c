import type { LaidTable } from '../goal/laid-table';
import { type LegalRule, legalOf } from '../goal/legal';
import { without } from '../lie/balls-of';
import type { BallName, NamedBall, Position } from '../lie/position';
import type { TableEvent, TablePlay } from '../table/table-play';

/** What a stroke made of the turn of who played it: plain data. */
export type Turn =
  /** The last ball fell, or by a foul or too early the one that ends it. */
  | { readonly kind: 'won' }
  | { readonly kind: 'lost' }
  /** A ball fell that may: the same player goes on. */
  | { readonly kind: 'goes-on'; readonly position: Position }
  /** The other player's turn; after a foul with the cue ball in hand, and no cue ball lies there. */
  | { readonly kind: 'passes'; readonly isFoul: boolean; readonly position: Position };

const EIGHT = 8;

/** What may be touched first by the other player: the other group, or the same balls. */
export function othersRule(rule: LegalRule): LegalRule {
  if (rule === 'low') return 'high';
  return rule === 'high' ? 'low' : rule;
}

/** How many balls must fall for who plays by a rule to win; of a group the eight comes on top. */
export function ballsToGo(rule: LegalRule, position: Position): number {
  const { falls } = legalOf(rule, position);
  const isGroup = rule === 'low' || rule === 'high';
  const hasEight = isGroup && position.some(({ name }) => name === EIGHT);
  return falls.length + (hasEight && !falls.includes(EIGHT) ? 1 : 0);
}

/**
 * What a stroke makes of the turn. It is a foul to touch no ball that may be touched first, to lose the
 * cue ball, to drive a ball off the table, or to bring after the touch no ball to a cushion or into a
 * pocket (common practice, no source). A ball that fell by a foul stays where it fell.
 *
 * @param play of all balls in the order of the table; null: a miscue, which moves nothing and is a foul
 */
export function turnAfter(
  rule: LegalRule,
  position: Position,
  { names }: Pick<LaidTable, 'names'>,
  play: TablePlay | null,
): Turn {
  if (play === null) {
    return { kind: 'passes', isFoul: true, position: without(position, 'cue') };
  }
  const before = legalOf(rule, position);
  const fallen = names.filter((_, at) => play.balls[at]?.outcome.kind === 'pocketed');
  const isFoul = isFoulPlay(play, names, before.first);
  const left = whatLies(play, names);
  const own = fallen.filter((name) => typeof name === 'number' && before.falls.includes(name));
  const isGroup = rule === 'low' || rule === 'high';
  if (isGroup && fallen.includes(EIGHT)) {
    return { kind: before.falls.includes(EIGHT) && !isFoul ? 'won' : 'lost' };
  }
  const isLast = legalOf(rule, left).falls.length === 0 && before.falls.length > 0;
  if (isLast) return { kind: isFoul ? 'lost' : 'won' };
  if (isFoul) return { kind: 'passes', isFoul, position: without(left, 'cue') };
  return own.length > 0
    ? { kind: 'goes-on', position: left }
    : { kind: 'passes', isFoul, position: left };
}

function isFoulPlay(
  { balls, events }: TablePlay,
  names: readonly BallName[],
  first: readonly number[],
): boolean {
  const cueBall = balls[0]?.outcome.kind;
  if (cueBall === 'pocketed' || balls.some(({ outcome }) => outcome.kind === 'off-table')) {
    return true;
  }
  const at = events.findIndex((event) => event.kind === 'hits-ball' && event.ball === 0);
  const hit = events[at];
  const name = hit?.kind === 'hits-ball' ? names[hit.other] : undefined;
  if (typeof name !== 'number' || !first.includes(name)) return true;
  return !events.slice(at + 1).some(isDriven);
}

function isDriven({ kind }: TableEvent): boolean {
  return kind === 'hits-cushion' || kind === 'pocketed';
}

/** The balls where a play leaves them, the cue ball first. */
function whatLies({ balls }: TablePlay, names: readonly BallName[]): Position {
  return names.flatMap((name, at): NamedBall[] => {
    const outcome = balls[at]?.outcome;
    if (outcome === undefined || outcome.kind === 'pocketed' || outcome.kind === 'off-table') {
      return [];
    }
    return [{ name, xM: outcome.xM, yM: outcome.yM }];
  });
}
