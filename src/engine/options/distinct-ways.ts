import type { Kit } from '../model/kit';
import type { Option } from './solve-option';
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

/**
 * The best option of every kind of way there is, the easiest first: kinds differ in side, in how the
 * cue ball arrives, and in speed.
 */
export function distinctWays(
  options: readonly Option[],
  kit: Kit,
  leastElevationRad: number,
): readonly NamedOption[] {
  const kinds = new Map<string, NamedOption>();
  for (const option of [...options].sort(byChance)) {
    const way = wayOf(option, kit, leastElevationRad);
    const kind = `${way.side} ${way.arrival} ${way.isDrag} ${way.speed}`;
    if (!kinds.has(kind)) kinds.set(kind, { option, way });
  }
  return [...kinds.values()];
}
