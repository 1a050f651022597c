import type { SpeedWord, TrialBed } from '../engine/fit/trials/trial';
import type { TrialName } from '../engine/fit/trials/trials';
import { shotsToDo } from '../engine/fit/trials/trials';
import { FIGURE_NAMES, type Figures, figuresOf } from './fit-figures';

/** What every shot of a trial has in common: the rest cannot be guessed. */
export interface UsualShot {
  readonly figures: Partial<Figures>;
  readonly speedWord: SpeedWord | null;
}

/** Two tables, for what does not hang on the table: nine and eight feet, nose to nose, m. */
const ANY_TABLES = [2.54, 2.337];

/**
 * What is usual of a trial's shots.
 *
 * @param tableLengthM undefined where it is not known
 */
export function usualShot(
  trial: TrialName,
  tableLengthM: number | undefined,
  ballRadiusM: number,
): UsualShot {
  const lengths = tableLengthM === undefined ? ANY_TABLES : [tableLengthM];
  const beds = lengths.map<TrialBed>((lengthM) => ({ lengthM, ballRadiusM }));
  const shots = beds.flatMap(shotsToDo).filter((shot) => shot.trial === trial);
  const common = commonOf(shots.map(figuresOf));
  const [word = null, ...others] = shots.map(({ stroke }) => stroke.speedWord);
  return { figures: common, speedWord: others.every((other) => other === word) ? word : null };
}

function commonOf([first, ...others]: readonly Figures[]): Partial<Figures> {
  if (first === undefined) return {};
  const common = FIGURE_NAMES.filter((name) => others.every((shot) => shot[name] === first[name]));
  return Object.fromEntries(common.map((name) => [name, first[name]]));
}
