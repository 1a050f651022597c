import { didScratch, type RestZone, type Scene } from '../goal/scene';
import { length } from '../numerics/length';
import type { Point } from '../table/point';
import type { TablePlay } from '../table/table-play';
import type { GoingPlay } from './drawn-plays';
import type { RestSpread } from './ranked-way';

/** What drawn strokes tell of the cue ball. */
export interface CueBallFate {
  readonly rest: RestSpread;
  readonly goodPosition: number | null;
  readonly clean: number;
  readonly scratch: number;
}

/** What of a scene tells where a cue ball rests well. */
type RestScene = Pick<Scene, 'shape' | 'zone'>;

/** Where a ball rests, and how likely that is beside the others. */
export interface Rest {
  readonly at: Point;
  readonly weight: number;
}

/** @param meant the stroke itself: it tells the middle where no draw left the cue ball at rest */
export function cueBallFate(
  scene: RestScene,
  plays: readonly TablePlay[],
  going: readonly GoingPlay[],
  meant: TablePlay | null,
): CueBallFate {
  const rests = going
    .filter(({ play }) => !didScratch(play))
    .map(({ play, weight }) => ({ at: cueBallEnd(play, scene), weight }));
  const all = weightOf(going);
  const scratches = plays.filter(didScratch).length;
  return {
    rest: spreadOf(rests, meant && cueBallEnd(meant, scene)),
    goodPosition: scene.zone === null ? null : shareIn(scene.zone, rests, going),
    clean: all === 0 ? 1 : weightOf(rests) / all,
    scratch: plays.length === 0 ? 0 : scratches / plays.length,
  };
}

/** Where the cue ball ends, be it in a pocket. */
export function cueBallEnd({ balls }: TablePlay, { shape }: Pick<Scene, 'shape'>): Point {
  const outcome = balls[0]?.outcome;
  if (outcome === undefined) throw new RangeError('a play has a cue ball');
  if (outcome.kind !== 'pocketed') return { x: outcome.xM, y: outcome.yM };
  const pocket = shape.pockets.find(({ name }) => name === outcome.pocket);
  return pocket?.drop ?? { x: 0, y: 0 };
}

/** How far a place is outside a zone, m; 0 within. */
export function outsideBy({ xM, yM, radiusM }: RestZone, { x, y }: Point): number {
  return Math.max(0, length(x - xM, y - yM) - radiusM);
}

function shareIn(zone: RestZone, rests: readonly Rest[], going: readonly GoingPlay[]): number {
  const all = weightOf(going);
  return all === 0 ? 0 : weightOf(rests.filter(({ at }) => outsideBy(zone, at) === 0)) / all;
}

function weightOf(list: readonly { readonly weight: number }[]): number {
  return list.reduce((sum, { weight }) => sum + weight, 0);
}

/** Places less likely than this share of the likeliest are not told. */
const WORTH_TELLING = 0.05;

/** @param otherwise the middle where there is no rest */
export function spreadOf(rests: readonly Rest[], otherwise: Point | null): RestSpread {
  const all = weightOf(rests);
  if (all === 0) {
    return { xM: otherwise?.x ?? 0, yM: otherwise?.y ?? 0, sdM: 0, places: [] };
  }
  const mean = (pick: (place: Point) => number) =>
    rests.reduce((sum, { at, weight }) => sum + weight * pick(at), 0) / all;
  const most = Math.max(...rests.map(({ weight }) => weight));
  const [xM, yM] = [mean(({ x }) => x), mean(({ y }) => y)];
  return {
    xM,
    yM,
    sdM: Math.sqrt(mean(({ x, y }) => (x - xM) ** 2 + (y - yM) ** 2)),
    places: rests
      .filter(({ weight }) => weight >= WORTH_TELLING * most)
      .map(({ at }) => ({ xM: at.x, yM: at.y })),
  };
}
