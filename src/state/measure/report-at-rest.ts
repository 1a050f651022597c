import { batch, computed, effect, type ReadonlySignal, signal } from '@preact/signals';
import type { FitJob } from '../../engine/fit/fit-report';
import { isSame } from '../../store/same-value';
import { MEASURE_PROBLEMS } from '../../words/measure-problems';
import type { WorkOut } from './find-priors';
import type { MeasureQuestion } from './measure-question';
import type { ServedAims, WorkedReport } from './work-report';

/** Works out the report of a question, for what readings are taken for. */
export type WorkReport = (
  question: MeasureQuestion,
  served: ServedAims,
  workOut: WorkOut,
) => Promise<WorkedReport>;

export interface ReportPorts {
  readonly question: ReadonlySignal<MeasureQuestion>;
  /** Null where nothing can be worked out beside the page. */
  readonly workOut: WorkOut | null;
  readonly workReport: WorkReport;
  /** Does work once the hand rests, unless called off by the function it returns. */
  readonly later: (work: () => void) => () => void;
  /** What readings are taken for, asked when the work begins. */
  readonly served: () => ServedAims;
  /** Whether a report of the present question is needed beside that of the one last worked out. */
  readonly isWanted: (worked: MeasureQuestion | null) => boolean;
}

/** The report of the last question that was worked out. */
export interface ReportAtRest {
  /** Null before the first. */
  readonly worked: ReadonlySignal<WorkedReport | null>;
  /** Whether nothing more comes of the present question: it was worked out, or cannot be. */
  readonly isDone: ReadonlySignal<boolean>;
  readonly problem: ReadonlySignal<string | null>;
  /** Stops watching. */
  dispose(): void;
}

const NO_WORKERS = MEASURE_PROBLEMS.noWorkers;
const NOT_WORKED_OUT = MEASURE_PROBLEMS.notWorkedOut;

/**
 * Works out the report that is wanted, a moment after the last change; the answer to an older question
 * is unused.
 */
export function createReportAtRest(ports: ReportPorts): ReportAtRest {
  const { question, workOut, workReport, later, served, isWanted } = ports;
  const worked = signal<WorkedReport | null>(null);
  const problem = signal<string | null>(workOut === null ? NO_WORKERS : null);
  if (workOut === null) return { worked, isDone: signal(true), problem, dispose() {} };
  const tried = signal<MeasureQuestion | null>(null);
  const workOnce = remembering(workOut);

  const work = async (asked: MeasureQuestion) => {
    const isPresent = () => question.peek() === asked;
    const settle = (done: WorkedReport | null, told: string | null) => {
      if (!isPresent()) return;
      batch(() => {
        worked.value = done;
        problem.value = told;
        tried.value = asked;
      });
    };
    const whileWanted: WorkOut = (job) =>
      isPresent() ? workOnce(job) : Promise.reject(new Error('Something newer was asked.'));
    try {
      const done = await workReport(asked, served(), whileWanted);
      settle(done, null);
    } catch {
      settle(worked.peek(), NOT_WORKED_OUT);
    }
  };

  let callOff = () => {};
  const stop = effect(() => {
    const asked = question.value;
    callOff();
    const isAsked = isWanted(worked.value?.question ?? null) && tried.peek() !== asked;
    if (isAsked) callOff = later(() => void work(asked));
  });
  return {
    worked,
    isDone: computed(() => tried.value === question.value),
    problem,
    dispose() {
      callOff();
      stop();
    },
  };
}

/** As many as an evening's changing of cues and cloths asks for again and again. */
const MOST_REMEMBERED = 24;

/** Works out each job once: the same job gives the same report, while it is among the last asked. */
function remembering(workOut: WorkOut): WorkOut {
  let known: readonly { readonly job: FitJob; readonly working: ReturnType<WorkOut> }[] = [];
  return (job) => {
    const one = known.find((other) => isSame(other.job, job)) ?? { job, working: workOut(job) };
    const others = () => known.filter((other) => other !== one);
    known = [...others(), one].slice(-MOST_REMEMBERED);
    // What failed may go well the next time.
    one.working.catch(() => {
      known = others();
    });
    return one.working;
  };
}
