import type { Shot } from '../direct/shot';
import type { Kit } from '../kit/kit';
import { type Advice, adviceOf } from './advice';
import { type AimSlopes, aimSlopes, aimVariance } from './aim-slopes';
import { type Estimate, estimatesOf } from './estimates';
import { type Fit, fitKit } from './fit-kit';
import type { FitShot, KitPrior, StrokeScatter } from './fit-question';
import { influenceAt } from './influence';
import { type KitKnowledge, kitKnowledge } from './kit-knowledge';
import { type Lesson, lessons } from './next-shot';
import { type ShotReport, shotReport } from './shot-report';
import { shotResiduals } from './shot-residuals';
import { type AimGoal, wayToGo } from './shots-to-go';
import { TRIALS, type TrialShot } from './trials/trials';

/** What there is to work out, as plain data. */
export interface FitJob {
  /** Struck-out ones are left out by the caller. */
  readonly shots: readonly FitShot[];
  /** The kit that is asked for. */
  readonly prior: KitPrior;
  readonly scatter: StrokeScatter;
  /** Shots as the player plays them: what is learnt should serve their aims. */
  readonly aims: readonly Shot[];
  /** Trials that could be done next. */
  readonly candidates: readonly TrialShot[];
  /** A shot whose aim is to be sure enough; left out where nobody asks how far that is. */
  readonly goal?: AimGoal;
}

/** The way to the goal. */
export interface ToGo {
  /** How many more shots; 0: it is reached, null: more than are told. */
  readonly shots: number | null;
  /** The one of them to play first; null: none helps. */
  readonly first: Pick<Lesson, 'shot' | 'teaches'> | null;
}

/** What was worked out, as plain data. */
export interface FitReport {
  readonly knowledge: KitKnowledge;
  /** Of every cue, cloth, ball set and table that the shots touch, and of the player. */
  readonly estimates: readonly Estimate[];
  /** In the order of the job's. */
  readonly shots: readonly ShotReport[];
  readonly advice: readonly Advice[];
  /** The best first. */
  readonly lessons: readonly Lesson[];
  /** Root mean square over the player's shots, rad, one standard deviation; null: none has an aim. */
  readonly aimSdRad: { readonly before: number; readonly after: number } | null;
  /** What is left to do until the goal is reached; null: there is none, or its shot has no aim. */
  readonly toGo: ToGo | null;
  readonly converged: boolean;
  /** How far shots stray compared with what was assumed of the player: 1 is as assumed. */
  readonly stretch: number;
}

/**
 * The whole of a calibration: what the readings tell of the kit, what is left over of each, what
 * cannot be told apart, and which shot would teach most next.
 *
 * @param onStep told again and again on the way: many readings take long
 */
export function fitReport(job: FitJob, onStep = () => {}): FitReport {
  const { prior, scatter } = job;
  const fit = fitKit(job.shots, [prior.parts], onStep);
  const knowledge = kitKnowledge(fit, prior);
  const aims = aimSlopes(job.aims, fit, prior, knowledge.kit);
  const taught = lessons(job.candidates, { fit, prior, scatter, aims }, onStep);
  return {
    knowledge,
    estimates: estimatesOf(fit, [prior, ...job.shots.map((shot) => shot.prior)]),
    shots: fit.shots.map((shot) => shotReport(shot, fit)),
    advice: adviceOf(fit),
    lessons: taught,
    aimSdRad: aimSds(aims, fit),
    toGo: toGoOf(job, taught, fit, knowledge.kit),
    converged: fit.converged,
    stretch: fit.stretch,
  };
}

function aimSds(aims: readonly AimSlopes[], { covariance }: Fit): FitReport['aimSdRad'] {
  if (aims.length === 0) return null;
  const unit = covariance.map((row, i) => row.map((_, j) => Number(i === j)));
  const rms = (spread: readonly (readonly number[])[]) =>
    Math.sqrt(
      aims.reduce((sum, slopes) => sum + Math.max(0, aimVariance(slopes, spread)), 0) / aims.length,
    );
  return { before: rms(unit), after: rms(covariance) };
}

/** Cushions, or how hard one plays, tell of an aim only by the way: nobody would see why they come first. */
function toGoOf(
  { goal, prior, scatter }: FitJob,
  taught: readonly Lesson[],
  fit: Fit,
  kit: Kit,
): ToGo | null {
  const [slopes] = goal ? aimSlopes([goal.shot], fit, prior, kit) : [];
  if (goal === undefined || slopes === undefined) return null;
  const choice = taught.flatMap((lesson) => {
    const { strokes, tells, isRaised = false } = TRIALS[lesson.shot.trial];
    if (!tells.some((part) => part !== 'table')) return [];
    const asked = { id: '', shot: lesson.shot, readings: lesson.expected, prior, scatter };
    const influence = influenceAt(shotResiduals(asked, fit.layout), fit.unknowns);
    return influence ? [{ lesson, influence, strokes, isRaised }] : [];
  });
  const { shots, first } = wayToGo(slopes, goal.enoughRad, choice, fit);
  return { shots, first: choice[first]?.lesson ?? null };
}
