import type { Option, OptionQuestion } from './solve-option';
import { type Way, wayOf } from './way';

/** An option and how players would call it. */
export interface NamedOption {
  readonly option: Option;
  readonly way: Way;
}

/** The best first; of equals the one earlier in the grid, so that the order never hangs on chance. */
export function byChance(a: Option, b: Option): number {
  return b.chance.share - a.chance.share || a.place - b.place;
}

/** Kinds differ in side, in how the cue ball arrives, and in speed. */
export function kindOf({ side, arrival, isDrag, speed }: Way): string {
  return `${side} ${arrival} ${isDrag} ${speed}`;
}

/** An option so nearly as likely as another, as a share of it, is as good: then the plainer counts. */
const AS_GOOD = 0.98;

/**
 * The best option of every kind of way there is, the easiest first. Of those as good as the best of
 * their kind it is the one with the most level cue, and then the softest.
 *
 * @param options none that cannot be played where the balls lie
 */
export function distinctWays(
  question: OptionQuestion,
  options: readonly Option[],
  leastElevationRad: number,
): readonly NamedOption[] {
  const kinds = new Map<string, { readonly best: number; named: NamedOption }>();
  for (const option of [...options].sort(byChance)) {
    const way = wayOf(question, option.stroke, leastElevationRad);
    const kind = kinds.get(kindOf(way));
    const named = { option, way };
    if (kind === undefined) {
      kinds.set(kindOf(way), { best: option.chance.share, named });
    } else if (option.chance.share >= AS_GOOD * kind.best && isPlainer(option, kind.named.option)) {
      kind.named = named;
    }
  }
  return [...kinds.values()].map(({ named }) => named).sort((a, b) => byChance(a.option, b.option));
}

function isPlainer({ stroke: one }: Option, { stroke: other }: Option): boolean {
  if (one.elevationRad !== other.elevationRad) return one.elevationRad < other.elevationRad;
  return one.speedMps < other.speedMps;
}
