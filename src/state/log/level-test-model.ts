import { batch, computed, effect, type ReadonlySignal, signal } from '@preact/signals';
import type { LevelShot, LevelTable } from '../../engine/player/level-test';
import type { KnownPlayer } from '../../engine/player/player-report';
import type { TableShape } from '../../engine/table/table-shape';
import { freshId } from '../../store/fresh-id';
import { PLAYER_PROBLEMS } from '../../words/player-problems';
import type { CopyResult } from '../edit-result';
import type { WhatBecame } from '../player/played-edits';
import type { PlayerModel } from '../player/player-model';
import { type LevelTest, levelTests, notYetLaid } from './level-tests';
import { askedInTest } from './shot-to-log';

/** Fifteen shots, each of which is the one that tells most just then. */
export interface LevelTestModel {
  /** The table it is laid on. */
  readonly shape: ReadonlySignal<TableShape>;
  /** Those of whoever plays, the oldest first. */
  readonly tests: ReadonlySignal<readonly LevelTest[]>;
  /** The last one, where it was left before its end. */
  readonly unfinished: ReadonlySignal<LevelTest | null>;
  /** What is to be laid now; null while that is worked out, and while nobody plays a test. */
  readonly next: ReadonlySignal<LevelShot | null>;
  /** What the shots of a test tell by themselves, by its id; of the last {@link MOST_TOLD} alone. */
  readonly told: ReadonlySignal<ReadonlyMap<string, KnownPlayer>>;
  /** One line on why there is nothing to lay or to tell; null where all is well. */
  readonly problem: ReadonlySignal<string | null>;
  /**
   * Plays a test until the function it returns is called: the one that was left, else a new one.
   *
   * @param isAnew a new one in any case
   */
  play(isAnew: boolean): () => void;
  /** Logs what became of {@link next}. */
  answer(became: WhatBecame): CopyResult;
  /** Has it worked out what the tests tell, until the function it returns is called. */
  tell(): () => void;
}

export interface LevelTestPorts {
  readonly player: Pick<PlayerModel, 'played' | 'question' | 'learning' | 'log'>;
  readonly table: ReadonlySignal<LevelTable>;
  /** Lays the shots of the test on a table; null where the browser cannot work beside the page. */
  readonly lay: ((table: LevelTable) => Promise<readonly LevelShot[]>) | null;
  readonly newId?: () => string;
}

/** As many as a chart has room for. */
export const MOST_TOLD = 12;

const NO_SHOT = { ok: false, problem: PLAYER_PROBLEMS.noTestShot } as const;

export function createLevelTestModel(ports: LevelTestPorts): LevelTestModel {
  const { player, table, lay, newId = freshId } = ports;
  const { learning } = player;
  const tests = computed(() => levelTests(player.played.value));
  const unfinished = computed(() => {
    const last = tests.value.at(-1);
    return last && !last.isDone ? last : null;
  });
  const playing = signal<'none' | 'on' | 'anew'>('none');
  const failed = signal(false);
  const laid = signal<{ table: LevelTable; shots: readonly LevelShot[] } | null>(null);
  const picked = signal<{ of: object; shot: LevelShot | null } | null>(null);
  const here = computed(() => (laid.value?.table === table.value ? laid.value.shots : null));
  const current = computed(() => (playing.value === 'anew' ? null : unfinished.value));
  const choice = computed(() => {
    if (playing.value === 'none' || here.value === null) return null;
    const level = notYetLaid(here.value, current.value ?? { shots: [] });
    return { level, question: player.question.value };
  });

  const attempt = async (work: () => Promise<void>) => {
    try {
      await work();
      failed.value = false;
    } catch {
      failed.value = true;
    }
  };
  effect(() => {
    const asked = table.value;
    if (playing.value === 'none' || here.value !== null || lay === null) return;
    void attempt(async () => {
      const shots = await lay(asked);
      laid.value = { table: asked, shots };
    });
  });
  effect(() => {
    const of = choice.value;
    if (of === null || learning === null) return;
    void attempt(async () => {
      const at = await learning.mostTelling(of.question, of.level);
      if (choice.peek() === of) picked.value = { of, shot: of.level[at ?? -1] ?? null };
    });
  });

  const isTelling = signal(false);
  const told = signal<ReadonlyMap<string, KnownPlayer>>(new Map());
  const stamps = new Map<string, string>();
  effect(() => {
    if (!isTelling.value || learning === null) return;
    for (const { id, shots, isDone } of tests.value.slice(-MOST_TOLD).reverse()) {
      const stamp = shots.map((shot) => `${shot.id} ${shot.result}`).join('\n');
      if (!isDone || stamps.get(id) === stamp) continue;
      stamps.set(id, stamp);
      void attempt(async () => {
        const known = await learning.learn({ madeOf10: null, shots });
        if (stamps.get(id) === stamp) told.value = new Map([...told.peek(), [id, known]]);
      });
    }
  });

  const next = computed(() => {
    const of = choice.value;
    return of !== null && picked.value?.of === of ? picked.value.shot : null;
  });
  return {
    shape: computed(() => table.value.shape),
    tests,
    unfinished,
    next,
    told,
    problem: computed(() => {
      if (lay === null || learning === null) return PLAYER_PROBLEMS.noWorkers;
      return failed.value ? PLAYER_PROBLEMS.noTestShot : null;
    }),
    play(isAnew) {
      playing.value = isAnew ? 'anew' : 'on';
      return () => {
        playing.value = 'none';
      };
    },
    answer(became) {
      const shot = next.peek();
      if (shot === null) return NO_SHOT;
      return batch(() => {
        const testId = current.peek()?.id ?? newId();
        const logged = player.log({
          ...askedInTest(shot, table.peek().shape),
          ...became,
          testId,
          drill: null,
        });
        if (logged.ok) playing.value = 'on';
        return logged;
      });
    },
    tell() {
      isTelling.value = true;
      return () => {
        isTelling.value = false;
      };
    },
  };
}
