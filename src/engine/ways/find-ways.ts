import type { FoundWay } from './found-way';
import { type PickRule, waysToRefine, waysToTell } from './pick-ways';
import { refineFound, type ToldWay } from './refine-found';
import { searchStretch } from './search-stretch';
import type { StretchFound } from './stretch-found';
import { waysStretches } from './stretches';
import type { WaysQuestion } from './ways-question';

/** How far a search is: parts done, of how many, and the ways known so far, the best first. */
export interface WaysNews {
  readonly done: number;
  readonly of: number;
  readonly ways: readonly ToldWay[];
}

/** All that a search came to. */
export interface WaysFound {
  readonly ways: readonly ToldWay[];
  /** How many ways that differ in what happens or in the stroke were found to go. */
  readonly compared: number;
  readonly parts: readonly StretchFound[];
}

/** The first ways are told after so many parts, and so many of them. */
const EARLY_PARTS = 6;
const EARLY_WAYS = 3;

/**
 * Looks for all ways to play a position, and tells how far it is after every part: whoever has enough
 * asks no more. The ways at the end hang on the question alone: neither on who stopped nor on who did
 * which part.
 */
export function* findWays(
  question: WaysQuestion,
  rule: PickRule,
): Generator<WaysNews, WaysFound, void> {
  const stretches = waysStretches(question);
  const of = stretches.length + rule.most;
  const parts: StretchFound[] = [];
  const refined = new Map<FoundWay, ToldWay>();
  const known = () =>
    waysToTell(
      [...refined.values()].filter((way) => way !== null),
      rule,
    );
  const found = () => parts.flatMap(({ ways }) => ways);
  for (const stretch of stretches) {
    parts.push(searchStretch(question, stretch));
    if (parts.length === EARLY_PARTS) {
      for (const way of waysToRefine(found(), { ...rule, most: EARLY_WAYS })) {
        refined.set(way, refineFound(question, way));
        yield { done: parts.length, of, ways: known() };
      }
    }
    yield { done: parts.length, of, ways: known() };
  }
  const chosen = waysToRefine(found(), rule);
  for (const [at, way] of chosen.entries()) {
    if (!refined.has(way)) refined.set(way, refineFound(question, way));
    yield { done: stretches.length + at + 1, of, ways: known() };
  }
  const told = chosen.flatMap((way) => refined.get(way) ?? []);
  return { ways: waysToTell(told, rule), compared: found().length, parts };
}
