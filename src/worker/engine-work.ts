import { fitReport } from '../engine/fit/fit-report';
import { foresee } from '../engine/fit/foresee';
import { fanOf } from '../engine/options/fan-of';
import type { OptionGrid } from '../engine/options/option-grid';
import { waysToRefine } from '../engine/options/rank-ways';
import type { RankedWay } from '../engine/options/ranked-way';
import { type RankQuestion, refineWay } from '../engine/options/refine-way';
import type { Option } from '../engine/options/solve-option';
import { sweepOpen } from '../engine/options/sweep-open';
import type { Stretch } from '../engine/options/sweep-options';
import { wayOf } from '../engine/options/way';
import { roomForError } from '../engine/room/room-for-error';

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

/** What the worker does, by name. Nothing but its types may reach the page: they weigh nothing. */
export const ENGINE_WORK = {
  fit: fitReport,
  foresee,
  room: (job: Readonly<Parameters<typeof roomForError>>) => roomForError(...job),
  sweep: ({ asked, grid, stretch }: SweepJob): readonly Option[] => sweepOpen(asked, grid, stretch),
  /** The options worth working out in full. */
  pick: ({ asked, options }: PickJob): readonly Option[] =>
    waysToRefine(asked, options).map(({ option }) => option),
  refine: ({ asked, option }: OptionJob): RankedWay => {
    const way = wayOf(option, asked.question.kit, asked.leastElevationRad);
    return refineWay(asked, { option, way });
  },
  fan: ({ asked, option }: OptionJob) => fanOf(asked.question, asked.scene, option),
};

export type EngineWork = typeof ENGINE_WORK;
export type JobName = keyof EngineWork;
export type JobOf<N extends JobName> = Parameters<EngineWork[N]>[0];
export type ResultOf<N extends JobName> = ReturnType<EngineWork[N]>;
