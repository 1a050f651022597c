import { DRAWS } from '../ways/drawn-chance';
import { type PickRule, waysToRefine } from '../ways/pick-ways';
import { searchStretch } from '../ways/search-stretch';
import type { StretchFound } from '../ways/stretch-found';
import { waysStretches } from '../ways/stretches';
import type { WaysQuestion } from '../ways/ways-question';
import { refineSafety, safetiesToRefine } from './refine-safety';
import { safetyStretches, searchSafety } from './search-safety';
import {
  type Play,
  playsToTell,
  refineWorthy,
  type WaysOrder,
  worthyToRefine,
} from './worthy-ways';

/** What a list of plays is to be like. */
export interface PlaysRule extends PickRule {
  readonly order: WaysOrder;
  /** Whether safeties are looked for too. */
  readonly hasSafeties: boolean;
  /** How many strokes of each are drawn and played; left out: as many as the app's. */
  readonly draws?: number;
}

/** All that a search came to. */
export interface PlaysFound {
  readonly plays: readonly Play[];
  /** How many ways that differ were found to go. */
  readonly compared: number;
  readonly parts: readonly StretchFound[];
}

/**
 * Looks for all ways to play a position, safeties among them, and tells what each is worth. It is done in
 * jobs that can be dealt to many hands: the parts of the searches, then every way by itself.
 */
export function findPlays(question: WaysQuestion, rule: PlaysRule): PlaysFound {
  const { order, hasSafeties, draws = DRAWS } = rule;
  const parts = waysStretches(question).map((stretch) => searchStretch(question, stretch));
  const found = parts.flatMap(({ ways }) => ways);
  const chosen =
    order === 'worth' ? worthyToRefine(question, found, rule) : waysToRefine(found, rule);
  const refined = chosen.map((way) => refineWorthy(question, way, draws));
  const safe = hasSafeties
    ? safetyStretches(question).flatMap((stretch) => searchSafety(question, stretch))
    : [];
  const safeties = safetiesToRefine(safe).map((one) => refineSafety(question, one, draws));
  return {
    plays: playsToTell(refined, safeties, rule, order),
    compared: found.length,
    parts,
  };
}
