import { batch, computed, effect, type ReadonlySignal, signal } from '@preact/signals';
import { type DrillShot, THEMES, type Theme } from '../../engine/player/drill-shot';
import type { Rung } from '../../engine/player/drill-shots';
import { chanceAt } from '../../engine/player/staircase';
import type { TableShape } from '../../engine/table/table-shape';
import type { PlayedRung } from '../../store/player';
import { isSame } from '../../store/same-value';
import { PLAYER_PROBLEMS } from '../../words/player-problems';
import type { CopyResult } from '../edit-result';
import type { WhatBecame } from '../player/played-edits';
import type { PlayerModel } from '../player/player-model';
import { createKeptDrills, type KeptDrills, type KeptDrillsPorts } from './kept-drills';
import { type Ladder, type LadderTry, ladderOf } from './ladders';
import { createLimitsAtRest, type LimitsAtRest, type LimitsPorts } from './limits-at-rest';
import { askedInTest, type ShotToLog } from './shot-to-log';

/** The shot of a ladder that is to be played now. */
export interface LaidRung {
  readonly asked: ShotToLog;
  readonly rung: PlayedRung;
}

/** What limits whoever plays, ladders of shots to practise, and ways kept to be played again. */
export interface PracticeModel extends LimitsAtRest {
  readonly shape: ReadonlySignal<TableShape>;
  /** How whoever plays stands on each ladder. */
  readonly ladders: ReadonlySignal<Readonly<Record<Theme, Ladder>>>;
  /** What is to be laid now; null while that is worked out, and while nobody practises. */
  readonly next: ReadonlySignal<LaidRung | null>;
  /** One line on why there is nothing to lay; null where all is well. */
  readonly problem: ReadonlySignal<string | null>;
  /** Practises a theme until the function it returns is called. */
  play(theme: Theme): () => void;
  /**
   * Logs what became of {@link next}.
   *
   * @param stopped where the cue ball stopped, where that was asked for and said
   */
  answer(became: WhatBecame, stopped: PlayedRung['stopped']): CopyResult;
  readonly kept: KeptDrills;
}

export interface PracticePorts extends KeptDrillsPorts, LimitsPorts {
  readonly player: Pick<
    PlayerModel,
    'played' | 'known' | 'question' | 'learning' | 'log' | 'inPlay'
  >;
}

const NO_SHOT = { ok: false, problem: PLAYER_PROBLEMS.noDrill } as const;

export function createPracticeModel(ports: PracticePorts): PracticeModel {
  const { player, level: table, work } = ports;
  const { learning } = player;
  const ladders = computed(() => {
    const told = THEMES.map((theme) => [theme, ladderOf(player.played.value, theme)] as const);
    return Object.fromEntries(told) as Record<Theme, Ladder>;
  });
  const theme = signal<Theme | null>(null);
  const failed = signal(false);
  const laid = signal<{ of: object; shots: readonly DrillShot[] } | null>(null);
  const picked = signal<{ of: object; rung: Rung | null } | null>(null);
  const ladder = computed(() => theme.value && ladders.value[theme.value]);
  /** What is laid hangs on these. */
  const asked = computed(() => theme.value && { theme: theme.value, table: table.value });
  const here = computed(() => (laid.value?.of === asked.value ? laid.value?.shots : null) ?? null);
  /** The last try of a set that goes on: on another table it does not. */
  const current = computed(() => {
    const last = ladder.value?.set.at(-1);
    const { lengthM, widthM } = table.value.shape;
    const at = last?.position;
    return last && at && at.lengthM === lengthM && at.widthM === widthM ? last : null;
  });
  const choice = computed(() => {
    const shots = here.value;
    if (shots === null || ladder.value === null || current.value !== null) return null;
    const { level, lastSet, set } = ladder.value;
    return { shots, chance: chanceAt(level), not: placesOf(shots, [...lastSet, ...set].at(-1)) };
  });

  const attempt = async (effort: () => Promise<void>) => {
    try {
      await effort();
      failed.value = false;
    } catch {
      failed.value = true;
    }
  };
  effect(() => {
    const of = asked.value;
    if (of === null || here.value !== null || work === null) return;
    void attempt(async () => {
      const shots = await work('drills', of);
      if (asked.peek() === of) laid.value = { of, shots };
    });
  });
  effect(() => {
    const of = choice.value;
    if (of === null || work === null || learning === null) return;
    void attempt(async () => {
      const known = player.known.peek() ?? (await learning.learn(player.question.peek()));
      const rung = await work('rung', { some: known.some, ...of });
      if (choice.peek() === of) picked.value = { of, rung };
    });
  });

  const next = computed((): LaidRung | null => {
    if (current.value !== null) return sameAgain(current.value);
    const of = choice.value;
    const found = of !== null && picked.value?.of === of ? picked.value.rung : null;
    const shot = found && of?.shots[found.at];
    if (!found || !shot) return null;
    const { room, rest } = shot;
    return {
      asked: askedInTest(shot, table.value.shape),
      rung: { chance: found.chance, room, rest, stopped: null },
    };
  });
  return {
    ...createLimitsAtRest(ports),
    shape: computed(() => table.value.shape),
    ladders,
    next,
    problem: computed(() => {
      if (work === null || learning === null) return PLAYER_PROBLEMS.noWorkers;
      const isNone = picked.value !== null && picked.value.of === choice.value && !next.value;
      return failed.value || isNone ? PLAYER_PROBLEMS.noDrill : null;
    }),
    play(wanted) {
      theme.value = wanted;
      return () => {
        theme.value = null;
      };
    },
    answer(became, stopped) {
      const [now, id] = [next.peek(), theme.peek()];
      if (now === null || id === null) return NO_SHOT;
      const rung = { ...now.rung, stopped: became.result === 'went' ? stopped : null };
      return batch(() =>
        player.log({ ...now.asked, ...became, testId: null, drill: { id, rung } }),
      );
    },
    kept: createKeptDrills(ports),
  };
}

/** What a try asked. */
function sameAgain({ shot, aimRad, target, kit, spread, position, drill }: LadderTry): LaidRung {
  const asked = { shot, aimRad, target, kit, spread, position };
  return { asked, rung: { ...drill.rung, stopped: null } };
}

/** Where shots that lie as one did stand in a list. */
function placesOf(shots: readonly DrillShot[], last: LadderTry | undefined): readonly number[] {
  return shots.flatMap(({ position }, at) => (isSame(position, last?.position?.balls) ? [at] : []));
}
