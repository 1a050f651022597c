import type { Range } from '../engine/numerics/range';
import type { Pocket } from './records';

/** What a player may enter: a mouth a little wider than any ball, up to a wide-open one. */
export const POCKET_RANGES = {
  distanceM: { min: 0.01, max: 4 },
  mouthM: { min: 0.085, max: 0.3 },
} as const satisfies Record<keyof Pocket, Range>;
