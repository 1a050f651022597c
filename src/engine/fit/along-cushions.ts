import type { LeastSquaresFit, Patience } from '../numerics/least-squares';
import { averageOf, covarianceOf, halfLogOf, type PartBelief, spreadAbout } from './belief';
import type { FitLayout } from './fit-layout';
import type { FitShot, Parts } from './fit-question';
import { withAt } from './shot-residuals';

/** How the unknowns are sought. */
interface Search {
  /** From a start; one may be held where the start has it. */
  readonly seek: (start: readonly number[], patience?: Patience, held?: number) => LeastSquaresFit;
  /** What the cost of a search lacks of minus the logarithm of a likelihood. */
  readonly costOfSpread: (unknowns: readonly number[]) => number;
}

/** Where among the unknowns a table's cushions are; −1: they are none of them. */
interface CushionPlaces {
  readonly restitution: number;
  readonly friction: number;
  /** What a prior deviation of the restitution is worth: of the logarithm of what it lacks to 1. */
  readonly lackSd: number;
}

/** @param parts those of the kit that is asked for: of one table at a time */
export function cushionsAt(
  layout: FitLayout,
  parts: Parts | undefined,
  asked: readonly FitShot[],
): CushionPlaces {
  const table = parts?.table ?? '';
  const prior = asked.find((shot) => shot.prior.parts.table === table)?.prior;
  return {
    restitution: layout.indexOf('table', table, 'cushionRestitution'),
    friction: layout.indexOf('table', table, 'cushionFriction'),
    lackSd: prior?.spread.cushionRestitution ?? 1,
  };
}

/** What is believed of the unknowns. */
interface Belief {
  /** Where they are likeliest. */
  readonly top: LeastSquaresFit;
  /** What they are taken for, and how far from there they may lie. */
  readonly point: readonly number[];
  readonly covariance: readonly (readonly number[])[];
}

/** A point of a way: the best of all else at one restitution. */
interface Node {
  readonly at: readonly number[];
  readonly restitution: number;
  /** The cost of the search there. */
  readonly sought: number;
  /** Minus the logarithm of what the restitution is worth there, all else summed over. */
  readonly cost: number;
  readonly covariance: readonly (readonly number[])[];
  /** How all unknowns go along with the restitution, per deviation of it. */
  readonly ridge: readonly number[];
  /** How far the restitution is uncertain, as it looks from here. */
  readonly width: number;
}

/** Steps along a way are as wide as the restitution is uncertain, within this; prior deviations. */
const STEPS = { min: 0.05, max: 0.7 };
/** What weighs less than e⁻⁴ of the best is left out. */
const LEFT_OUT = 4;
/** No restitution is looked for further than this from its prior's middle. */
const FARTHEST = 3.5;
const MOST_STEPS = 30;
/** Known better than this share of the prior's variance, it has been read. */
const READ = 0.95;
/** To tell a node's weight to a hundredth. */
const AT_NODE = { maxRounds: 12, enough: 0.01 };
/**
 * Where else ways are looked for: further from the first top by so much restitution and friction. Much
 * friction takes what a livelier cushion gives.
 */
const OTHERWISE = [
  [0, -1.3],
  [1, 1.3],
] as const;
/** A top that is higher by this is another; and how often one is gone to. */
const HIGHER = 1;
const MOST_TRIES = 3;
/** Two ways are one where their frictions are no further apart, in prior deviations. */
const SAME = 0.35;

/**
 * What is believed of the unknowns, once a top is found. Where cushions have been read, no parabola
 * about a top tells it. A lively cushion may lack next to nothing or a little, for all the readings
 * say; and much friction at the nose may explain them as well as little, for in the end it holds the
 * ball. So the restitution is followed from each top to where it is out of the question, and all else
 * summed over at every step by a parabola of its own.
 *
 * Source: nested approximations of Laplace, Rue, Martino and Chopin 2009 (from memory).
 *
 * @returns another top where following led to one that is higher
 */
export function alongCushions(top: LeastSquaresFit, places: CushionPlaces, search: Search): Belief {
  const { at, curvature } = top;
  const covariance = covarianceOf(curvature);
  const { restitution, friction } = places;
  const isRead = (covariance[restitution]?.[restitution] ?? 1) < READ;
  if (!isRead) return { top, point: at, covariance };
  const others = OTHERWISE.map(([e, f]) =>
    withAt(withAt(at, restitution, (at[restitution] ?? 0) + e), friction, (at[friction] ?? 0) + f),
  );
  const ways: (readonly Node[])[] = [];
  for (const start of [at, ...others]) {
    const way = followedFromBest(start, ways, places, search);
    if (way.length > 0) ways.push(way);
  }
  const lowest = lowestOf(ways.flat(), ({ sought }) => sought);
  const isHigher = lowest !== undefined && lowest.sought < top.cost - HIGHER;
  const highest = isHigher ? search.seek(lowest.at) : top;
  const parts = ways.flatMap(partsOf);
  const point = pointOf(parts, places);
  return { top: highest, point, covariance: spreadAbout(point, parts) };
}

/** The mean; of a restitution, that of what it lacks: what cushions give back on the whole. */
function pointOf(
  parts: readonly PartBelief[],
  { restitution, lackSd }: CushionPlaces,
): readonly number[] {
  const lackAt = (sds: number) => Math.exp(-lackSd * sds);
  const mean = (parts[0]?.at ?? []).map((_, i) => averageOf(parts, ({ at }) => at[i] ?? 0));
  const lack = averageOf(parts, ({ at }) => lackAt(at[restitution] ?? 0));
  return withAt(mean, restitution, -Math.log(lack) / lackSd);
}

function lowestOf(nodes: readonly Node[], of: (node: Node) => number): Node | undefined {
  return nodes.reduce<Node | undefined>(
    (one, other) => (one === undefined || of(other) < of(one) ? other : one),
    undefined,
  );
}

/** Where a way leads to a higher top, it is followed from there instead. */
function followedFromBest(
  top: readonly number[],
  ways: readonly (readonly Node[])[],
  places: CushionPlaces,
  search: Search,
): readonly Node[] {
  let way: readonly Node[] = [];
  let from = top;
  for (let tries = 0; tries < MOST_TRIES; tries++) {
    const first = nodeAt(from, places, search);
    way = isOnOne(first, ways, places) ? [] : followed(first, ways, places, search);
    const best = lowestOf(way, ({ cost }) => cost);
    if (best === undefined || best.cost > first.cost - HIGHER) break;
    from = best.at;
  }
  return way;
}

/** From a top either way; empty where it leads to a way that has been followed. */
function followed(
  first: Node,
  ways: readonly (readonly Node[])[],
  places: CushionPlaces,
  search: Search,
): readonly Node[] {
  const sides = [-1, 1].map((side) => {
    const nodes: Node[] = [];
    let least = Math.min(first.cost, ...ways.flat().map(({ cost }) => cost));
    let last = first;
    // Twice, for a search that was left off early tells too much.
    for (let out = 0; out < 2 && nodes.length < MOST_STEPS; ) {
      const { at, ridge, width } = last;
      const by = side * Math.min(STEPS.max, Math.max(STEPS.min, width));
      if (Math.abs(last.restitution + by) > FARTHEST) break;
      const ahead = at.map((value, index) => value + by * (ridge[index] ?? 0));
      last = nodeAt(ahead, places, search);
      if (isOnOne(last, ways, places)) break;
      nodes.push(last);
      least = Math.min(least, last.cost);
      out = last.cost > least + LEFT_OUT ? out + 1 : 0;
    }
    return nodes;
  });
  return [...(sides[0] ?? []).reverse(), first, ...(sides[1] ?? [])];
}

function nodeAt(
  start: readonly number[],
  { restitution: held }: CushionPlaces,
  search: Search,
): Node {
  const { at, cost, curvature } = search.seek(start, AT_NODE, held);
  const all = covarianceOf(curvature);
  const variance = all[held]?.[held] ?? 1;
  const ridge = all.map((row) => (row[held] ?? 0) / variance);
  return {
    at,
    restitution: at[held] ?? 0,
    sought: cost,
    // Held, the restitution is not among what is summed over.
    cost: cost + search.costOfSpread(at) + halfLogOf(curvature) + Math.log(variance) / 2,
    covariance: all.map((row, i) =>
      row.map((value, j) => value - (ridge[i] ?? 0) * (ridge[j] ?? 0) * variance),
    ),
    ridge,
    width: Math.sqrt(variance),
  };
}

/** Whether a node lies on one of the ways, between two nodes of it. */
function isOnOne(
  { at, restitution }: Node,
  ways: readonly (readonly Node[])[],
  { friction }: CushionPlaces,
): boolean {
  return ways.some((way) =>
    way.some((node, index) => {
      const next = way[index + 1];
      if (next === undefined) return false;
      const share = (restitution - node.restitution) / (next.restitution - node.restitution);
      if (!(share >= 0 && share <= 1)) return false;
      const [low, high] = [node.at[friction] ?? 0, next.at[friction] ?? 0];
      return Math.abs(low + share * (high - low) - (at[friction] ?? 0)) < SAME;
    }),
  );
}

/** Each node stands for half of the way to its neighbours. */
function partsOf(way: readonly Node[]): readonly PartBelief[] {
  return way.map(({ at, restitution, cost, covariance, width }, index) => {
    const before = restitution - (way[index - 1]?.restitution ?? restitution);
    const after = (way[index + 1]?.restitution ?? restitution) - restitution;
    const share = way.length > 1 ? (before + after) / 2 : width;
    return { at, covariance, cost, share };
  });
}
