import type { PickRule } from '../../src/engine/ways/pick-ways';
import type { WaysQuestion } from '../../src/engine/ways/ways-question';
import { findPlays } from '../../src/engine/worth/find-plays';
import type { PlaysFound } from '../../src/engine/worth/plays-order';
import type { WorthyWay } from '../../src/engine/worth/worthy-ways';

/** A search to its end: the ways to pot, the likeliest first. */
export function waysOf(
  question: WaysQuestion,
  rule: PickRule,
): Omit<PlaysFound, 'plays'> & { readonly ways: readonly WorthyWay[] } {
  const search = findPlays(question, { ...rule, order: 'goes', hasSafeties: false });
  for (;;) {
    const news = search.next();
    if (!news.done) continue;
    const { plays, ...found } = news.value;
    return { ...found, ways: plays.flatMap((play) => ('struck' in play ? [] : [play])) };
  }
}
