import { findWays } from '../../src/engine/ways/find-ways';
import type { PickRule } from '../../src/engine/ways/pick-ways';
import type { WaysFound } from '../../src/engine/ways/ways-order';
import type { WaysQuestion } from '../../src/engine/ways/ways-question';

/** A search to its end. */
export function waysOf(question: WaysQuestion, rule: PickRule): WaysFound {
  const search = findWays(question, rule);
  for (;;) {
    const news = search.next();
    if (news.done) return news.value;
  }
}
