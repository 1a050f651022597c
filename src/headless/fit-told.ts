import type { Advice } from '../engine/fit/advice';
import type { FitReport } from '../engine/fit/fit-report';
import type { KitKnowledge } from '../engine/fit/kit-knowledge';
import type { Lesson } from '../engine/fit/next-shot';
import type { ReadingReport, ShotReport } from '../engine/fit/shot-report';
import type { Readings } from '../engine/fit/trials/trial';
import type { TrialName, TrialShot } from '../engine/fit/trials/trials';
import { TRIALS } from '../engine/fit/trials/trials';
import { KIT_QUANTITIES } from '../engine/kit/kit-spread';
import { DEG_PER_RAD } from '../engine/numerics/angle';
import { figuresOf } from './fit-figures';
import type { AskedFit } from './fit-job';
import { quantityName, toldEstimate, toldQuantity } from './fit-quantity';

/** A report in the words and units of the door. */
export function toldReport(report: FitReport, { job, ids, isNextAsked }: AskedFit) {
  const { aimSdRad, converged, stretch, advice, shots } = report;
  return {
    ok: true,
    estimates: report.estimates.map((estimate) => toldEstimate(estimate, job.prior.kit)),
    kit: report.knowledge.kit,
    correlations: toldCorrelations(report.knowledge),
    readings: shots.flatMap((shot, index) => toldShot(shot, ids[index])),
    flags: {
      converged,
      stretch,
      doubtful: ids.filter((_, index) => shots[index]?.isDoubtful),
      advice: advice.map(toldAdvice),
    },
    aimSdDeg: aimSdRad && {
      before: aimSdRad.before * DEG_PER_RAD,
      after: aimSdRad.after * DEG_PER_RAD,
    },
    ...(isNextAsked ? { next: toldNext(report.lessons) } : {}),
  };
}

/** What goes less together than this is not told. */
const LEAST_TOLD = 0.5;

/** The strongest first. */
function toldCorrelations({ correlation }: KitKnowledge) {
  const pairs = KIT_QUANTITIES.flatMap((one, i) =>
    KIT_QUANTITIES.slice(i + 1).map((two, later) => ({
      one,
      two,
      correlation: correlation[i]?.[i + 1 + later] ?? 0,
    })),
  );
  return pairs
    .filter((pair) => Math.abs(pair.correlation) > LEAST_TOLD)
    .sort((a, b) => Math.abs(b.correlation) - Math.abs(a.correlation));
}

function toldShot({ readings, goodShare }: ShotReport, id: unknown) {
  return readings.map((reading) => ({ id, ...toldReading(reading), goodShare }));
}

function toldReading({ name, read, expected, sd }: ReadingReport) {
  const residual = expected === null ? null : (read - expected) / sd;
  return { name, read, expected, sd, residual };
}

function toldAdvice(advice: Advice): object {
  if (advice.kind === 'pull-together') {
    const { one, two, ...rest } = advice;
    return { ...rest, one: toldQuantity(one), two: toldQuantity(two) };
  }
  const { quantity, ...rest } = advice;
  return { ...rest, ...toldQuantity(quantity) };
}

/** Null where no shot would teach anything. */
function toldNext([best]: readonly Lesson[]) {
  if (best === undefined) return null;
  const { shot, expected, teaches, worth } = best;
  return {
    shot: toldShotToDo(shot),
    expected: readOf(shot.trial, expected),
    teaches: quantityName(teaches),
    worth,
  };
}

/** As a request would give it. */
function toldShotToDo(shot: TrialShot) {
  const { speedMps, ...figures } = figuresOf(shot);
  const { speedWord } = shot.stroke;
  return {
    trial: shot.trial,
    ...figures,
    ...(speedWord === null ? { speedMps } : { speed: speedWord }),
  };
}

/** Of all that is expected, what this trial reads. */
function readOf(trial: TrialName, expected: Readings): Readings {
  const names = TRIALS[trial].readings.map(({ name }) => [name, expected[name]]);
  return Object.fromEntries(names);
}
