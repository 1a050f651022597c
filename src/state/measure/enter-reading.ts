import { elevationAt } from '../../engine/fit/butt-elevation';
import { READING_RANGES, TRIAL_RANGES } from '../../engine/fit/trials/trial';
import type { Kit } from '../../engine/kit/kit';
import { isWithin, type Range } from '../../engine/numerics/range';
import type { Attempt, ButtReading } from '../../store/attempt';
import { BUTT_RANGES } from '../../store/record-ranges';
import { MEASURE_PROBLEMS } from '../../words/measure-problems';
import { withStepDone } from './attempt-progress';
import type { TrialStep } from './trial-steps';

/** An attempt with something entered, or why it was not. */
export type Entered =
  | { readonly ok: true; readonly attempt: Attempt }
  | {
      readonly ok: false;
      /** One kind line, ready to show. */
      readonly problem: string;
    };

/** What the butt's height is worked out with. */
export interface ButtContext {
  readonly cueLengthM: number;
  readonly kit: Pick<Kit, 'ballRadiusM' | 'tipRadiusM'>;
}

/** The attempt with the number that a step asked for, in SI units, and the step done. */
export function withEntered(
  attempt: Attempt,
  step: TrialStep,
  value: number,
  context: ButtContext,
): Entered {
  if (step.kind === 'done') return refuse(MEASURE_PROBLEMS.nothingToEnter);
  const entered = enteredAt(attempt, step, value, context);
  return entered.ok ? { ok: true, attempt: withStepDone(entered.attempt, step) } : entered;
}

function enteredAt(
  attempt: Attempt,
  { name }: TrialStep,
  value: number,
  { cueLengthM, kit }: ButtContext,
): Entered {
  if (name === 'butt') return withButt(attempt, { buttHeightM: value, cueLengthM }, kit);
  if (name === 'distance') return withDistance(attempt, value);
  if (name === 'place' || name === 'play') return refuse(MEASURE_PROBLEMS.nothingToEnter);
  return (
    outside(READING_RANGES[name], value) ?? {
      ok: true,
      attempt: { ...attempt, readings: { ...attempt.readings, [name]: value } },
    }
  );
}

function withDistance(attempt: Attempt, distanceM: number): Entered {
  const { shot } = attempt;
  return (
    outside(TRIAL_RANGES.distanceM, distanceM) ?? {
      ok: true,
      attempt: { ...attempt, shot: { ...shot, setup: { ...shot.setup, distanceM } } },
    }
  );
}

/** The attempt with how its cue was held, where the engine takes the elevation that this tells. */
function withButt(attempt: Attempt, butt: ButtReading, kit: ButtContext['kit']): Entered {
  const { buttHeightM, cueLengthM } = butt;
  const refused = outside(BUTT_RANGES.buttHeightM, buttHeightM);
  if (refused) return refused;
  const { side, height } = attempt.shot.stroke;
  const elevationRad = elevationAt(buttHeightM, { side, height, cueLengthM }, kit);
  if (elevationRad === null || elevationRad > TRIAL_RANGES.elevationRad.max) {
    return refuse(MEASURE_PROBLEMS.tooSteep);
  }
  if (elevationRad < 0) return refuse(MEASURE_PROBLEMS.tooLow);
  return { ok: true, attempt: { ...attempt, butt } };
}

/** The attempt with another length of its cue; what was read of the butt must make sense with it. */
export function withCueLength(
  attempt: Attempt,
  cueLengthM: number,
  kit: ButtContext['kit'],
): Entered {
  const refused = outside(BUTT_RANGES.cueLengthM, cueLengthM);
  if (refused) return refused;
  const { butt } = attempt;
  return butt ? withButt(attempt, { ...butt, cueLengthM }, kit) : { ok: true, attempt };
}

/** The refusal of a value outside a range; null within it. */
function outside(range: Range, value: number): Extract<Entered, { ok: false }> | null {
  if (isWithin(range, value)) return null;
  if (value > range.max) return refuse(MEASURE_PROBLEMS.tooMuch);
  if (value < range.min) return refuse(MEASURE_PROBLEMS.tooLittle);
  return refuse(MEASURE_PROBLEMS.notANumber);
}

function refuse(problem: string): Extract<Entered, { ok: false }> {
  return { ok: false, problem };
}
