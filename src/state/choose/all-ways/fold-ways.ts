import type { WayKind } from '../../../engine/goal/goal';
import { isSame } from '../../../store/same-value';
import { figureOf, type ListOrder } from './list-order';
import type { ShownWay } from './shown-way';

/** What of a list is worth a row, and the rest by kinds. */
export interface FewWays {
  readonly rows: readonly ShownWay[];
  readonly folded: ReadonlyMap<WayKind | 'safety', readonly ShownWay[]>;
}

/** With less than this share of the best one's figure a way is far behind. */
const FAR_BEHIND = 0.75;

/**
 * Folds away of each kind what is far behind the best of all, but for the best of the kind, and what is much
 * like one that has a row.
 *
 * @param ways in their order
 * @param isMixed whether they are of many kinds; of one that was asked for nothing is too far behind
 */
export function foldWays(ways: readonly ShownWay[], order: ListOrder, isMixed: boolean): FewWays {
  const least = FAR_BEHIND * Math.max(...ways.map((way) => figureOf(way, order)));
  const rows: ShownWay[] = [];
  const folded = new Map<WayKind | 'safety', readonly ShownWay[]>();
  for (const way of ways) {
    const { kind } = way.told.goal;
    const shown = rows.filter(({ told }) => told.goal.kind === kind);
    const isFar = isMixed && shown.length > 0 && figureOf(way, order) < least;
    if (!isFar && !shown.some((other) => isAlike(way, other))) rows.push(way);
    else folded.set(kind, [...(folded.get(kind) ?? []), way]);
  }
  return { rows, folded };
}

/** Cue balls that rest within this of each other rest in the same place, m; or within so much of their scatter. */
const SAME_PLACE_M = 0.1;
const SAME_PLACE_SDS = 0.5;

/** Whether two ways do the same, at the same pace, and leave the cue ball in the same place: by other side alone. */
function isAlike({ told: one }: ShownWay, { told: other }: ShownWay): boolean {
  const sideless = { ...one.way, side: other.way.side };
  const near = Math.max(SAME_PLACE_M, SAME_PLACE_SDS * Math.min(one.rest.sdM, other.rest.sdM));
  return (
    !('struck' in one) &&
    isSame(one.goal, other.goal) &&
    isSame(sideless, other.way) &&
    Math.hypot(one.rest.xM - other.rest.xM, one.rest.yM - other.rest.yM) < near
  );
}
