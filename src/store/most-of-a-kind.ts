import type { ImportPlan } from './store-port';
import { LIST_NAMES } from './stores';

/**
 * How many cues, cloths, ball sets, tables, shots of trials or positions are kept at most. Every start
 * reads all of them before it shows an answer. Ten readings a week come to as many in ten years.
 */
export const MOST_OF_A_KIND = 5000;

/** Why there is no room for another, in one kind line. */
export const NO_MORE = 'Leeway keeps 5,000 of a kind at most, for each start reads all of them.';

/** Why not so much can be brought in; null where it can. What is here already is never too much. */
export function whyTooMany({ changes }: Pick<ImportPlan, 'changes'>): string | null {
  const isTooMany = LIST_NAMES.some((name) => {
    const { added, changed, removed, left } = changes[name];
    const staying = changed.length + left.length;
    const [before, after] = [staying + removed.length, staying + added.length] as const;
    return after > MOST_OF_A_KIND && after > before;
  });
  return isTooMany ? `${NO_MORE} Delete some here first, or replace what is here.` : null;
}
