import { fitReport } from '../engine/fit/fit-report';
import { foresee } from '../engine/fit/foresee';
import { laidTable, playLaid } from '../engine/goal/laid-table';
import type { Kit } from '../engine/kit/kit';
import type { Position } from '../engine/lie/position';
import { fanOf } from '../engine/plan/fan-of';
import type { OptionGrid } from '../engine/plan/option-grid';
import { type PocketsQuestion, pocketChances } from '../engine/plan/pocket-chances';
import { waysToRefine } from '../engine/plan/rank-ways';
import type { RankedWay } from '../engine/plan/ranked-way';
import { type RankQuestion, refineWay } from '../engine/plan/refine-way';
import type { Option } from '../engine/plan/solve-option';
import { sweepOpen } from '../engine/plan/sweep-open';
import type { Stretch } from '../engine/plan/sweep-options';
import { wayOf } from '../engine/plan/way';
import type { Theme } from '../engine/player/drill-shot';
import { drillShots, nearestRung } from '../engine/player/drill-shots';
import { type LevelTable, levelTest } from '../engine/player/level-test';
import { whatLimits } from '../engine/player/limits';
import { playerReport } from '../engine/player/player-report';
import { rangeOfChance } from '../engine/player/some-players';
import { roomForError } from '../engine/room/room-for-error';
import type { Stroke } from '../engine/stroke/stroke';
import type { TableShape } from '../engine/table/table-shape';
import { fanOfWay, type ToldWay } from '../engine/ways/refine-found';
import type { WaysQuestion } from '../engine/ways/ways-question';
import { type LaidWay, tellLaid } from '../engine/worth/laid-way';
import { PLAYS_WORK } from '../engine/worth/plays-work';
import { fanOfSafety } from '../engine/worth/refine-safety';
import type { ToldSafety } from '../engine/worth/safety';

/** A part of a sweep. */
export interface SweepJob {
  readonly asked: RankQuestion;
  readonly grid: OptionGrid;
  readonly stretch: Stretch;
}

/** One option of a sweep, and what it is an option for. */
export interface OptionJob {
  readonly asked: RankQuestion;
  readonly option: Option;
}

/** All that a sweep found. */
export interface PickJob {
  readonly asked: RankQuestion;
  readonly options: readonly Option[];
}

/** One way that was worked out. */
export interface WaysFanJob {
  readonly question: WaysQuestion;
  readonly told: ToldWay;
}

/** One way that somebody laid elsewhere. */
export interface WayLaidJob {
  readonly question: WaysQuestion;
  readonly way: LaidWay;
}

/** One safety that was worked out. */
export interface SafetyFanJob {
  readonly question: WaysQuestion;
  readonly told: ToldSafety;
}

/** Shots to practise on a table. */
export interface DrillsJob {
  readonly theme: Theme;
  readonly table: LevelTable;
}

/** One stroke over a table with balls on it. */
export interface StrokeJob {
  readonly balls: Position;
  readonly shape: TableShape;
  readonly kit: Kit;
  /** In the table's frame. */
  readonly stroke: Stroke;
}

/** What the worker does, by name. Nothing but its types may reach the page: they weigh nothing. */
export const ENGINE_WORK = {
  fit: fitReport,
  foresee,
  room: roomForError,
  sweep: ({ asked, grid, stretch }: SweepJob): readonly Option[] => sweepOpen(asked, grid, stretch),
  /** The options worth working out in full. */
  pick: ({ asked, options }: PickJob): readonly Option[] =>
    waysToRefine(asked, options).map(({ option }) => option),
  refine: ({ asked, option }: OptionJob): RankedWay => {
    const way = wayOf(asked.question, option.stroke, asked.leastElevationRad);
    return refineWay(asked, { option, way });
  },
  /** About how often a ball goes into each pocket. */
  pockets: (asked: PocketsQuestion) => pocketChances(asked),
  /** A player, from what became of shots. */
  learn: playerReport,
  /** The shots of the level test on a table. */
  level: levelTest,
  /** What limits a player most on the shots they play. */
  limits: whatLimits,
  /** The shots of a ladder on a table, and the one to be played of them. */
  drills: ({ theme, table }: DrillsJob) => drillShots(theme, table),
  rung: nearestRung,
  /** How far the chance of a shot may be off for what is not known of the player. */
  range: rangeOfChance,
  ...PLAYS_WORK,
  wayLaid: ({ question, way }: WayLaidJob) => tellLaid(question, way),
  waysFan: ({ question, told }: WaysFanJob) => fanOfWay(question, told),
  safetyFan: ({ question, told }: SafetyFanJob) => fanOfSafety(question, told),
  /** What all balls do, the cue ball first; null: it cannot be struck so. */
  stroke: ({ balls, shape, kit, stroke }: StrokeJob) =>
    playLaid(laidTable(balls, shape), stroke, kit),
  fan: ({ asked, option }: OptionJob) => fanOf(asked.question, asked.scene, option),
};

export type EngineWork = typeof ENGINE_WORK;
export type JobName = keyof EngineWork;
export type JobOf<N extends JobName> = Parameters<EngineWork[N]>[0];
export type ResultOf<N extends JobName> = ReturnType<EngineWork[N]>;
