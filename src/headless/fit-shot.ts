import { refusal } from '../engine/direct/refusal';
import { USUAL_SPEEDS } from '../engine/fit/trials/set-up';
import { SPEED_WORDS, type SpeedWord, type TrialSetup } from '../engine/fit/trials/trial';
import { TRIALS, type TrialName, type TrialShot } from '../engine/fit/trials/trials';
import { DEG_PER_RAD } from '../engine/numerics/angle';
import { isWithin, type Range } from '../engine/numerics/range';
import { isBeyondMiscue } from '../engine/stroke/miscue-limit';
import { type DoorRefusal, isRefusal, notTaken, span, worded } from './door-refusal';
import {
  FIGURE_NAMES,
  FIGURE_RANGES,
  type FigureName,
  type Figures,
  shotOf,
  tidyDegrees,
} from './fit-figures';
import { type UsualShot, usualShot } from './fit-usual';
import { type Fields, orElse } from './json-fields';

/** What holds for every shot of a job. */
export interface ShotSetting {
  /** Of the shots that do not tell their own, m; undefined where it is not known. */
  readonly tableLengthM: unknown;
  readonly ballRadiusM: number;
}

/** What of a set-up may be told, by its name at the door. */
const SETUP_FIGURES: { readonly [N in keyof TrialSetup]: FigureName } = {
  gapM: 'gapM',
  cutRad: 'cutDeg',
  distanceM: 'distanceM',
  bedLengthM: 'tableLengthM',
};

/** Of a set-up; where it does not hang on them they may be anything, 0 included. */
const SETUP_NAMES: readonly FigureName[] = Object.values(SETUP_FIGURES);

/** Whether a trial's readings hang on a figure of its set-up: the others need not be told. */
function hangsOn(trial: TrialName, figure: FigureName): boolean {
  return TRIALS[trial].hangsOn.some((name) => SETUP_FIGURES[name] === figure);
}

/** Nearer than this, m, there is no way to be read, and no gap. */
const LEAST: Partial<Figures> = { distanceM: 0.05, gapM: 0.005 };

/**
 * A trial's shot, or why it cannot be taken. What is left out is as usual in that trial, where all
 * shots of it have it in common; an object ball is cut so that it runs along the table.
 */
export function parseTrialShot(
  given: Fields,
  trial: TrialName,
  setting: ShotSetting,
): TrialShot | DoorRefusal {
  const tableLengthM = orElse(given.tableLengthM, setting.tableLengthM);
  if (tableLengthM !== undefined && !isWithin(FIGURE_RANGES.tableLengthM, tableLengthM)) {
    return outside('tableLengthM', FIGURE_RANGES.tableLengthM);
  }
  const usual = usualShot(trial, tableLengthM, setting.ballRadiusM);
  const speed = parseSpeed(given, usual);
  if (isRefusal(speed)) return speed;
  const told = { ...given, tableLengthM, speedMps: speed.speedMps };
  const figures = parseFigures(told, trial, usual.figures);
  if (isRefusal(figures)) return figures;
  if (isBeyondMiscue(figures.side, figures.height)) {
    return worded(refusal('beyond-miscue-limit', 'side'));
  }
  return shotOf(trial, figures, speed.speedWord);
}

interface Speed {
  readonly speedMps: unknown;
  readonly speedWord: SpeedWord | null;
}

/** A speed is told as a word, whose meaning is the player's own, or as a figure. */
function parseSpeed({ speed, speedMps }: Fields, usual: UsualShot): Speed | DoorRefusal {
  if (speedMps !== undefined && speed === undefined) return { speedMps, speedWord: null };
  const speedWord = SPEED_WORDS.find((word) => word === orElse(speed, usual.speedWord));
  if (speedWord !== undefined && speedMps === undefined) {
    return { speedMps: USUAL_SPEEDS[speedWord], speedWord };
  }
  const words = `one of ${SPEED_WORDS.join(', ')}`;
  return notTaken('speed', `${words}, or be left out for a speedMps`);
}

function parseFigures(
  told: Fields,
  trial: TrialName,
  usual: Partial<Figures>,
): Figures | DoorRefusal {
  const figures: Partial<Record<FigureName, number>> = {};
  for (const name of FIGURE_NAMES) {
    const value = orElse(told[name], leftOut(name, trial, told, usual));
    const range = rangeOf(name, trial);
    if (!isWithin(range, value)) return outside(name, range);
    figures[name] = value;
  }
  return figures as Figures;
}

function leftOut(
  name: FigureName,
  trial: TrialName,
  { cutDeg }: Fields,
  usual: Partial<Figures>,
): number | undefined {
  if (SETUP_NAMES.includes(name) && !hangsOn(trial, name)) return 0;
  const { headingOf } = TRIALS[trial];
  if (headingOf && name === 'headingDeg') {
    return tidyDegrees(headingOf(Number(cutDeg) / DEG_PER_RAD));
  }
  return usual[name];
}

function rangeOf(name: FigureName, trial: TrialName): Range {
  const { min, max } = FIGURE_RANGES[name];
  if (!SETUP_NAMES.includes(name)) return { min, max };
  return hangsOn(trial, name) ? { min: LEAST[name] ?? min, max } : { min: 0, max };
}

function outside(name: FigureName, range: Range): DoorRefusal {
  const wanted = span(range);
  const more = name === 'distanceM' ? ', or a tableLengthM from which it follows' : '';
  return notTaken(name, wanted, `Give ${wanted}${more}.`);
}
