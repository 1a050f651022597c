import type { OptionGrid } from './option-grid';
import { pathCheck } from './path-in-the-way';
import type { RankQuestion } from './refine-way';
import type { Option } from './solve-option';
import { type Stretch, sweepOptions } from './sweep-options';

/**
 * The options of a stretch of the grid that can be played where the balls lie. A chance by straight
 * lines knows nothing of what stands in the way: what is blocked must never be given one.
 */
export function sweepOpen(
  asked: Pick<RankQuestion, 'question' | 'scene'>,
  grid: OptionGrid,
  stretch: Stretch,
): readonly Option[] {
  return sweepOptions(asked.question, grid, stretch).filter(pathCheck(asked));
}
