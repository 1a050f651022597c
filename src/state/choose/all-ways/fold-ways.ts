import type { WayKind } from '../../../engine/goal/goal';
import { isSame } from '../../../store/same-value';
import { type ListOrder, orderedShare } from './list-order';
import { isSafety, type ShownPot, type ShownWay } from './shown-way';

/** Ways of one kind that are not worth a row each. */
export interface FoldedWays {
  readonly kind: WayKind | 'safety';
  readonly ways: readonly ShownWay[];
  /** Whether some are far below the best of the list, and whether some are much like one that is shown. */
  readonly areFar: boolean;
  readonly areAlike: boolean;
}

/** What of a list is worth a row, and the rest by kinds. */
export interface FewWays {
  readonly rows: readonly ShownWay[];
  readonly folded: readonly FoldedWays[];
}

/** Worth less by so much than the best is far less good; by chance, less than this share of it. */
export const FAR_LESS_GOOD = 0.15;
const FAR_LESS_LIKELY = 0.5;

/**
 * Folds away of each kind what is far below the best of all, but for the best of the kind, and what is much
 * like one that is shown.
 *
 * @param ways in their order
 * @param isMixed whether they are of many kinds; of one that was asked for nothing is too far below
 */
export function foldWays(ways: readonly ShownWay[], order: ListOrder, isMixed: boolean): FewWays {
  const best = Math.max(...ways.map((way) => figureOf(way, order)));
  const isFar = (way: ShownWay) =>
    order === 'worth'
      ? best - figureOf(way, order) >= FAR_LESS_GOOD
      : !isSafety(way) && figureOf(way, order) < FAR_LESS_LIKELY * best;
  const alike = ways.filter((way, at) => ways.slice(0, at).some((other) => isAlike(way, other)));
  const kinds = [...new Set(ways.map(kindOf))];
  const folded = kinds.flatMap((kind): readonly FoldedWays[] => {
    const ofKind = ways.filter((way) => kindOf(way) === kind);
    const same = ofKind.filter((way) => alike.includes(way));
    const others = ofKind.filter((way) => !alike.includes(way));
    const below = isMixed ? others.slice(1).filter(isFar) : [];
    // One row would only stand for another.
    const far = below.length > 1 ? below : [];
    const away = ofKind.filter((way) => same.includes(way) || far.includes(way));
    const fold = { kind, ways: away, areFar: far.length > 0, areAlike: same.length > 0 };
    return away.length === 0 ? [] : [fold];
  });
  const away = new Set(folded.flatMap((fold) => fold.ways));
  return { rows: ways.filter((way) => !away.has(way)), folded };
}

function kindOf({ told }: ShownWay): WayKind | 'safety' {
  return told.goal.kind;
}

function figureOf(way: ShownWay, order: ListOrder): number {
  if (order === 'worth') return way.told.worth.worth;
  return isSafety(way) ? 0 : orderedShare(way, order);
}

/** Cue balls that rest within this of each other rest in the same place, m; or within so much of their scatter. */
const SAME_PLACE_M = 0.1;
const SAME_PLACE_SDS = 0.5;

/** Whether two ways do the same, at the same pace, and leave the cue ball in the same place: by other side alone. */
function isAlike(one: ShownWay, other: ShownWay): boolean {
  if (isSafety(one) || isSafety(other)) return false;
  return isSame(sameOf(one), sameOf(other)) && restsWith(one, other);
}

function sameOf({ told: { goal, way } }: ShownPot) {
  const { side, ...rest } = way;
  return { goal, rest };
}

function restsWith({ told: { rest: one } }: ShownPot, { told: { rest: other } }: ShownPot) {
  const near = Math.max(SAME_PLACE_M, SAME_PLACE_SDS * Math.min(one.sdM, other.sdM));
  return Math.hypot(one.xM - other.xM, one.yM - other.yM) < near;
}
