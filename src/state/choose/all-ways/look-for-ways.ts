import type { FanPlay } from '../../../engine/plan/ranked-way';
import { wayId } from '../../../engine/ways/way-id';
import type { WaysQuestion } from '../../../engine/ways/ways-question';
import { type PlaysFound, playsInOrder } from '../../../engine/worth/plays-order';
import type { PlaysJob, PlaysRule } from '../../../engine/worth/plays-work';
import type { WorthyWay } from '../../../engine/worth/worthy-ways';
import type { Work } from '../../../worker/engine-pool';
import { inTurn } from './in-turn';

/** A way as it is shown: worked out in full, and played out. */
export interface ShownWay {
  /** Tells it from every other. */
  readonly key: string;
  readonly told: WorthyWay;
  readonly fan: readonly FanPlay[];
}

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
export const RULE: PlaysRule = { most: 24, keepsLow: true, order: 'worth', hasSafeties: false };

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
    if (asked.name !== 'waysRefine') return { result, way: null };
    const told = result as WorthyWay;
    const fan = await work('waysFan', { question, told }, signal);
    return { result, way: { told, fan } };
  };
  let done = 0;
  const order = playsInOrder(question, RULE);
  let round = order.next([]);
  while (round.done !== true) {
    const { jobs, of } = round.value;
    const results = await inTurn(jobs, AT_ONCE, does, ({ way }) => {
      if (of !== null) hooks.onProgress(++done, of);
      if (way === null) return;
      const id = wayId(way.told, way.told.option.stroke);
      if (known.has(id)) return;
      const shown = { ...way, key: `${known.size}` };
      known.set(id, shown);
      hooks.onWay(shown);
    });
    round = order.next(results.map(({ result }) => result));
  }
  const { plays, ...found } = round.value;
  return {
    ...found,
    ways: plays.flatMap((told) =>
      'struck' in told ? [] : (known.get(wayId(told, told.option.stroke)) ?? []),
    ),
  };
}

interface Done {
  readonly result: unknown;
  /** Null where it is no way. */
  readonly way: Omit<ShownWay, 'key'> | null;
}
