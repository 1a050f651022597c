import { type ChanceMap, chanceMap } from '../../engine/plan/chance-map';
import { gridFrom } from '../../engine/plan/grid-from';
import { orderWays } from '../../engine/plan/rank-ways';
import type { RankedWay } from '../../engine/plan/ranked-way';
import type { RankQuestion } from '../../engine/plan/refine-way';
import type { Option } from '../../engine/plan/solve-option';
import { stretchesOf } from '../../engine/plan/sweep-options';
import type { Work } from '../../worker/engine-pool';

/** Told of how far a comparison has come. */
export interface CompareHooks {
  /** 0 to 1. */
  onProgress(progress: number): void;
  onMap(map: ChanceMap): void;
  /** The easiest first. */
  onWays(ways: readonly RankedWay[]): void;
}

/** About what of the time the sweep takes. */
const SWEEP_SHARE = 0.6;
/** How often the picture is drawn anew while it grows. */
const PICTURES = 10;

/**
 * Compares all ways to play a shot. Stretches of the grid are dealt to the workers in order and put
 * together by place, so that what comes out is the same whoever was done first. Rejected as soon as
 * any part is.
 */
export async function compareWays(
  asked: RankQuestion,
  work: Work,
  signal: AbortSignal,
  hooks: CompareHooks,
): Promise<void> {
  const options = await sweep(asked, work, signal, hooks);
  const picked = await work('pick', { asked, options }, signal);
  const refined = new Map<number, RankedWay>();
  await Promise.all(
    picked.map(async (option, at) => {
      refined.set(at, await work('refine', { asked, option }, signal));
      hooks.onWays(orderWays(inOrder(refined)));
      hooks.onProgress(SWEEP_SHARE + (1 - SWEEP_SHARE) * (refined.size / picked.length));
    }),
  );
}

async function sweep(
  asked: RankQuestion,
  work: Work,
  signal: AbortSignal,
  hooks: CompareHooks,
): Promise<readonly Option[]> {
  const { scene } = asked;
  const grid = gridFrom(scene.position, scene.headingRad, scene.shape, scene.kit);
  const stretches = stretchesOf(grid);
  const found = new Map<number, readonly Option[]>();
  const isPicture = () => {
    const parts = (done: number) => Math.floor((done * PICTURES) / stretches.length);
    return found.size === 1 || parts(found.size) > parts(found.size - 1);
  };
  await Promise.all(
    stretches.map(async (stretch, at) => {
      found.set(at, await work('sweep', { asked, grid, stretch }, signal));
      if (isPicture()) hooks.onMap(chanceMap(grid, inOrder(found).flat()));
      hooks.onProgress((SWEEP_SHARE * found.size) / stretches.length);
    }),
  );
  return inOrder(found).flat();
}

function inOrder<T>(parts: ReadonlyMap<number, T>): readonly T[] {
  return [...parts].sort(([one], [other]) => one - other).map(([, part]) => part);
}
