import { wayId } from '../../../engine/ways/way-id';
import type { WaysQuestion } from '../../../engine/ways/ways-question';
import { type PlaysFound, playsInOrder } from '../../../engine/worth/plays-order';
import type { PlaysJob, PlaysRule } from '../../../engine/worth/plays-work';
import type { ToldSafety } from '../../../engine/worth/safety';
import type { Play, WorthyWay } from '../../../engine/worth/worthy-ways';
import type { Work } from '../../../worker/engine-pool';
import { inTurn } from './in-turn';
import { type ShownWay, struckAs } from './shown-way';

/** What a search came to. */
export interface AllFound extends Omit<PlaysFound, 'plays'> {
  /** What is worth most first. */
  readonly ways: readonly ShownWay[];
}

/** Told of how far a search has come. */
export interface LookHooks {
  onProgress(done: number, of: number): void;
  /** One more is known; always in the same order. */
  onWay(way: ShownWay): void;
}

/** As many as a person would look through; of every kind and pocket some, be their chance low. */
export const RULE: PlaysRule = { most: 24, keepsLow: true, order: 'worth', hasSafeties: true };

/** Enough for every worker there may be, and so few that what is shown soon waits for little. */
const AT_ONCE = 6;

/**
 * Looks for all ways to play a position. The jobs of each round are dealt to the workers in order and
 * told in order, so what comes out is the same whoever was done first. Rejected as soon as any job is.
 */
export async function lookForWays(
  question: WaysQuestion,
  work: Work,
  signal: AbortSignal,
  hooks: LookHooks,
): Promise<AllFound> {
  /** Workers give copies, so by what tells ways apart. */
  const known = new Map<string, ShownWay>();
  const does = async (asked: PlaysJob): Promise<Done> => {
    const result = await work(asked.name, asked.job, signal);
    if (asked.name === 'waysRefine') {
      const told = result as WorthyWay;
      const fan = await work('waysFan', { question, told }, signal);
      return { result, way: (key) => ({ key, told, fan }) };
    }
    if (asked.name === 'safetyRefine') {
      const told = result as ToldSafety;
      const fan = await work('safetyFan', { question, told }, signal);
      return { result, way: (key) => ({ key, told, fan }) };
    }
    return { result, way: null };
  };
  let done = 0;
  const order = playsInOrder(question, RULE);
  let round = order.next([]);
  while (round.done !== true) {
    const { jobs, of } = round.value;
    const results = await inTurn(jobs, AT_ONCE, does, ({ way }) => {
      if (of !== null) hooks.onProgress(++done, of);
      if (way === null) return;
      const shown = way(`${known.size}`);
      const id = idOf(shown.told);
      if (known.has(id)) return;
      known.set(id, shown);
      hooks.onWay(shown);
    });
    round = order.next(results.map(({ result }) => result));
  }
  const { plays, ...found } = round.value;
  return {
    ...found,
    ways: plays.flatMap((told) => known.get(idOf(told)) ?? []),
  };
}

function idOf(told: Play): string {
  return wayId(told, struckAs(told).option.stroke);
}

interface Done {
  readonly result: unknown;
  /** Makes the way that is shown of it; null where it is no way. */
  readonly way: ((key: string) => ShownWay) | null;
}
