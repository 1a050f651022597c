import { type ReadonlySignal, signal } from '@preact/signals';
import type { FanPlay, RankedWay } from '../../engine/plan/ranked-way';
import type { RankQuestion } from '../../engine/plan/refine-way';
import type { Option } from '../../engine/plan/solve-option';
import type { ChanceRange, RangeJob } from '../../engine/player/some-players';
import { CHOOSE_PROBLEMS } from '../../words/choose-problems';
import type { Work } from '../../worker/engine-pool';
import type { Comparing } from './comparing';

/** The way looked at, and how it plays out. */
export interface Choosing {
  readonly chosen: ReadonlySignal<RankedWay | null>;
  /** What it was worked out for; null while there is none. */
  readonly chosenFor: ReadonlySignal<RankQuestion | null>;
  readonly fan: ReadonlySignal<readonly FanPlay[]>;
  readonly range: ReadonlySignal<ChanceRange | null>;
  readonly problem: ReadonlySignal<string | null>;
  choose(way: RankedWay | null): void;
  /** Works its chance out anew for somebody of whom more is known: way, paths and aim stay. */
  renew(question: RankQuestion): void;
  /** The best way of a cell of the map: by the values beside it, not by their places. */
  chooseCell(side: number, speedMps: number): void;
}

const NOT_PLAYED = CHOOSE_PROBLEMS.notPlayed;

/**
 * What is chosen next supersedes what is still being worked out.
 * @param rangeOf what tells how far a way's chance may be off; null where nothing is known of who plays
 */
export function createChoosing(
  { comparison, asked }: Pick<Comparing, 'comparison' | 'asked'>,
  work: Work | null,
  rangeOf: (asked: RankQuestion, way: RankedWay) => RangeJob | null,
): Choosing {
  const chosen = signal<RankedWay | null>(null);
  const chosenFor = signal<RankQuestion | null>(null);
  const fan = signal<readonly FanPlay[]>([]);
  const range = signal<ChanceRange | null>(null);
  const problem = signal<string | null>(null);
  let abort = new AbortController();

  const begin = (way: RankedWay | null) => {
    abort.abort();
    abort = new AbortController();
    chosen.value = way;
    chosenFor.value = way && asked.peek();
    fan.value = [];
    range.value = null;
    problem.value = null;
    return abort.signal;
  };
  const attempt = async (isUnwanted: AbortSignal, effort: () => Promise<void>) => {
    try {
      await effort();
    } catch {
      if (!isUnwanted.aborted) problem.value = NOT_PLAYED;
    }
  };
  const playOut = async (way: RankedWay, question: RankQuestion, isUnwanted: AbortSignal) => {
    const plays = await work?.('fan', { asked: question, option: way.option }, isUnwanted);
    if (plays && !isUnwanted.aborted) fan.value = plays;
    await tellRange(way, question, isUnwanted);
  };
  const tellRange = async (way: RankedWay, question: RankQuestion, isUnwanted: AbortSignal) => {
    const job = rangeOf(question, way);
    // The way stands without it.
    const ends = job && (await work?.('range', job, isUnwanted).catch(() => null));
    if (ends && !isUnwanted.aborted) range.value = ends;
  };
  const choose = (way: RankedWay | null) => {
    const isUnwanted = begin(way);
    const question = asked.peek();
    if (way && question) void attempt(isUnwanted, () => playOut(way, question, isUnwanted));
  };
  const chooseOption = (option: Option, question: RankQuestion) => {
    const isUnwanted = begin(chosen.peek());
    void attempt(isUnwanted, async () => {
      const way = await work?.('refine', { asked: question, option }, isUnwanted);
      if (!way || isUnwanted.aborted) return;
      chosen.value = way;
      await playOut(way, question, isUnwanted);
    });
  };
  const renew = (question: RankQuestion) => {
    const former = chosen.peek();
    if (former === null) return;
    abort.abort();
    abort = new AbortController();
    const isUnwanted = abort.signal;
    void attempt(isUnwanted, async () => {
      const { option } = former;
      const worked = await work?.('refine', { asked: question, option }, isUnwanted);
      if (!worked || isUnwanted.aborted) return;
      chosen.value = worked;
      chosenFor.value = question;
      await (fan.peek().length === 0 ? playOut : tellRange)(worked, question, isUnwanted);
    });
  };

  return {
    chosen,
    chosenFor,
    renew,
    fan,
    range,
    problem,
    choose,
    chooseCell(side, speedMps) {
      const { map, ways } = comparison.peek();
      const [row, column] = [
        map?.speedsMps.indexOf(speedMps) ?? -1,
        map?.sides.indexOf(side) ?? -1,
      ];
      const option = map?.best[row]?.[column];
      const question = asked.peek();
      if (!option || !question) return;
      const known = ways.find((way) => way.option.place === option.place);
      if (known) choose(known);
      else chooseOption(option, question);
    },
  };
}
