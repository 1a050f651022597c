import type { ImportPlan } from './store-port';
import { LIST_NAMES } from './stores';

/**
 * How many cues, cloths, ball sets, tables, shots of trials, positions, players or shots played are
 * kept at most. Every start
 * reads all of them before it shows an answer. Ten readings a week come to as many in ten years.
 */
export const MOST_OF_A_KIND = 5000;

/** Whether so much cannot be brought in. What is here already is never too much. */
export function isTooMany({ changes }: Pick<ImportPlan, 'changes'>): boolean {
  return LIST_NAMES.some((name) => {
    const { added, changed, removed, left } = changes[name];
    const staying = changed.length + left.length;
    const [before, after] = [staying + removed.length, staying + added.length] as const;
    return after > MOST_OF_A_KIND && after > before;
  });
}
