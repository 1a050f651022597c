import type { PositionShot } from '../../../engine/goal/position-shot';
import type { FanPlay } from '../../../engine/plan/ranked-way';
import type { Way } from '../../../engine/plan/way';
import type { Stroke } from '../../../engine/stroke/stroke';
import type { ToldSafety } from '../../../engine/worth/safety';
import type { Play, WorthyWay } from '../../../engine/worth/worthy-ways';

/** A way to pot a ball as it is shown: worked out in full, and played out. */
export interface ShownPot extends Shown {
  readonly told: WorthyWay;
  /** Of a way that came from elsewhere: whether its stroke, as it is meant, does that here. */
  readonly does?: boolean;
}

/** A safety as it is shown; played as it is meant alone. */
export interface ShownSafety extends Shown {
  readonly told: ToldSafety;
}

/** A way of either kind. */
export type ShownWay = ShownPot | ShownSafety;

interface Shown {
  /** Tells it from every other. */
  readonly key: string;
  readonly fan: readonly FanPlay[];
}

export function isSafety(way: ShownWay): way is ShownSafety {
  return 'struck' in way.told;
}

/** The straight shot that it is; null of one that is laid by a point on a rail. */
export function shotOf({ told }: ShownWay): PositionShot | null {
  return 'struck' in told ? null : told.shot;
}

/** How a way is struck, whichever it is. */
export interface Struck {
  readonly headingRad: number;
  readonly way: Way;
  readonly option: { readonly stroke: Stroke };
}

export function struckAs(told: Play): Struck {
  if (!('struck' in told)) return told;
  const { headingRad, way, stroke } = told;
  return { headingRad, way, option: { stroke } };
}
