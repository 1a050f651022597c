import { distinctWays, type NamedOption } from './distinct-ways';
import type { RankedWay } from './ranked-way';
import { type RankQuestion, refineWay } from './refine-way';
import type { Option } from './solve-option';
import { waysToZone } from './ways-to-zone';
import { worthOf } from './worth-of';

/** More than a player would read. */
const MOST_WAYS = 12;
/** Worked out in full before the best are chosen. */
const MOST_REFINED = 18;
/** Cue balls that rest within this of each other rest in the same place, m. */
const SAME_PLACE_M = 0.1;

/**
 * The ways worth working out in full: of every kind the best.
 *
 * @param options none that a ball stands in the way of: see `sweep-open`
 */
export function waysToRefine(
  { question, scene, leastElevationRad }: RankQuestion,
  options: readonly Option[],
): readonly NamedOption[] {
  const ways =
    scene.zone === null
      ? distinctWays(question, options, leastElevationRad)
      : waysToZone(question, options, leastElevationRad, scene, scene.zone);
  return ways.slice(0, MOST_REFINED);
}

/** Works the ways out one by one, in no certain order: {@link orderWays} puts them right. */
export function* rankWays(
  asked: RankQuestion,
  options: readonly Option[],
): Generator<RankedWay, void, void> {
  for (const named of waysToRefine(asked, options)) yield refineWay(asked, named);
}

/**
 * The likeliest to go without a scratch first, or where there is a zone to go and leave the cue ball
 * there; of those that go equally often, to a whole per cent, the plainest first.
 */
export function easierFirst(one: RankedWay, other: RankedWay): number {
  return (
    percentOf(other) - percentOf(one) ||
    frillsOf(one) - frillsOf(other) ||
    worthOf(other) - worthOf(one)
  );
}

/**
 * The easiest first. Left out is what another way betters: same side and arrival, the cue ball in the
 * same place, and is worth more.
 */
export function orderWays(ways: readonly RankedWay[]): readonly RankedWay[] {
  const ordered = [...ways].sort(easierFirst);
  return ordered.filter((way) => !ordered.some((other) => betters(other, way))).slice(0, MOST_WAYS);
}

/** With a zone all are seldom enough for parts of a per cent to count. */
function percentOf(way: RankedWay): number {
  const percent = 100 * worthOf(way);
  return way.goodPosition === null ? Math.round(percent) : percent;
}

/** What of a way takes more than a plain stroke. */
function frillsOf({ way }: RankedWay): number {
  return [way.side !== 'none', way.isDrag, way.isRaised].filter(Boolean).length;
}

function betters(one: RankedWay, other: RankedWay): boolean {
  return (
    one.way.side === other.way.side &&
    one.way.arrival === other.way.arrival &&
    worthOf(one) > worthOf(other) &&
    Math.hypot(one.rest.xM - other.rest.xM, one.rest.yM - other.rest.yM) < SAME_PLACE_M
  );
}
