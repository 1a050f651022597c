import { signal } from '@preact/signals';
import type { KitKnowledge } from '../../../../src/engine/fit/kit-knowledge';
import { directCut } from '../../../../src/engine/goal/goal';
import { DEFAULT_CUSHION, DEFAULT_KIT } from '../../../../src/engine/kit/kit';
import { KIT_QUANTITIES, UNMEASURED } from '../../../../src/engine/kit/kit-spread';
import { createChooseModel } from '../../../../src/state/choose/create-choose-model';
import type { Asked } from '../../../../src/state/shot-field';
import { createMemoryStore } from '../../../../src/store/memory-store';
import { createNoticeBoard } from '../../../../src/store/notice-board';
import type { Table } from '../../../../src/store/records';
import type { SavedPosition } from '../../../../src/store/saved-position';
import type { StorePort } from '../../../../src/store/store-port';
import { createEnginePool } from '../../../../src/worker/engine-pool';
import { type FakeWorker, workshop } from '../../worker/fake-worker';
import { somebody } from '../player/open-player';
import { holdLater } from './held-later';
import { workOut } from './invented-work';

const LEVEL = { alongM_per_M: 0, rightM_per_M: 0 };
export const NINE_FOOT: Table = {
  id: 'nine',
  name: 'Nine feet',
  origin: 'invented',
  changes: [],
  like: null,
  lengthM: 2.54,
  widthM: 1.27,
  bedSlope: LEVEL,
  cushion: DEFAULT_CUSHION,
};

/** The usual kit, of which nothing was measured. */
export const KNOWN: KitKnowledge = {
  kit: DEFAULT_KIT,
  spread: UNMEASURED,
  correlation: KIT_QUANTITIES.map((_, i) => KIT_QUANTITIES.map((_, j) => Number(i === j))),
};

/** An invented cut into the far right corner. */
export const CUT: SavedPosition = {
  id: 'cut',
  name: 'A cut',
  origin: 'invented',
  lengthM: 2.54,
  widthM: 1.27,
  balls: [
    { name: 'cue', xM: -0.2, yM: -0.6 },
    { name: 3, xM: 0.25, yM: 0.6 },
    { name: 8, xM: -0.4, yM: 0.9 },
  ],
  goal: directCut(3, 'far-right'),
  zone: null,
  changedAtMs: 20,
};

export const OTHER: SavedPosition = { ...CUT, id: 'other', name: 'Another', changedAtMs: 10 };

export interface OpenOptions {
  readonly positions?: readonly SavedPosition[];
  /** None: the browser has none. */
  readonly workers?: number;
  /** In place of the store's own. */
  readonly store?: Partial<StorePort>;
  readonly table?: Table;
}

/** The place Choose over a memory store that holds just these positions. */
export async function openChoose(options: OpenOptions = {}) {
  const { positions = [CUT, OTHER], workers = 1 } = options;
  const memory = createMemoryStore(createNoticeBoard());
  for (const { id } of (await memory.loadAll()).positions) await memory.delete('positions', id);
  for (const position of positions) await memory.put('positions', position);
  const { hired, make } = workshop();
  const table = signal(options.table ?? NINE_FOOT);
  const knowledge = signal(KNOWN);
  const player = somebody();
  const sent: { asked: Asked | null } = { asked: null };
  const { later, rest } = holdLater();
  let [ids, ms] = [0, 1000];
  const model = createChooseModel({
    store: { ...memory, ...options.store },
    positions,
    table,
    knowledge,
    player,
    work: workers === 0 ? null : createEnginePool(make, workers),
    shot: {
      ask(asked) {
        sent.asked = asked;
      },
    },
    later,
    now: () => ++ms,
    newId: () => `new-${++ids}`,
  });
  const stored = async () => (await memory.loadAll()).positions;
  return { model, table, knowledge, player, hired, sent, stored, rest };
}

/** Lets everything that waits for an answer go on. */
export async function settle(): Promise<void> {
  await new Promise((resolve) => setTimeout(resolve, 0));
}

/** Has a worker break down, and each that takes over, until its job is given up. */
export function giveUp(hired: readonly FakeWorker[], first: number): void {
  const TRIES = 3;
  for (let [tries, worker] = [0, hired[first]]; tries < TRIES; tries++, worker = hired.at(-1)) {
    worker?.fail('error');
  }
}

/** How many of its jobs each worker has answered. */
const answered = new WeakMap<FakeWorker, number>();

/** Has one of the workers that are busy answer; false where none is. */
export function answerOne(hired: readonly FakeWorker[], choice = 0): boolean {
  const busy = hired.filter((worker) => worker.asked.length > (answered.get(worker) ?? 0));
  const worker = busy[Math.floor(choice * busy.length)];
  const asked = worker?.asked.at(-1);
  if (worker === undefined || asked === undefined) return false;
  answered.set(worker, worker.asked.length);
  worker.say(structuredClone({ id: asked.id, ok: true, result: workOut(asked.name, asked.job) }));
  return true;
}

/** Has workers answer, in an order that a seed shuffles, until nothing more is asked. */
export async function answerAll(hired: readonly FakeWorker[], seed = 1): Promise<void> {
  let state = seed;
  const random = () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
  for (let idle = 0; idle < 2; ) {
    if (answerOne(hired, random())) {
      idle = 0;
    } else {
      idle += 1;
      await settle();
    }
  }
}
