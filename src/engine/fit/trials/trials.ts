import { ANGLE } from './angle';
import { COAST } from './coast';
import { CURVE } from './curve';
import { LINE } from './line';
import { PIVOT } from './pivot';
import { REBOUND } from './rebound';
import { SPEED } from './speed';
import { STOP } from './stop';
import { THROW } from './throw';
import type { MeantStroke, Trial, TrialBed, TrialSetup } from './trial';

/** Every trial a player can do at a table, in their usual order. A new one is a row here. */
const ROWS = [LINE, CURVE, STOP, THROW, COAST, PIVOT, SPEED, REBOUND, ANGLE] as const;

export type TrialName = (typeof ROWS)[number]['name'];
export const TRIAL_NAMES: readonly TrialName[] = ROWS.map(({ name }) => name);
export const TRIALS = Object.fromEntries<Trial>(ROWS.map((row) => [row.name, row])) as {
  readonly [N in TrialName]: Trial;
};

/** One shot of a trial, as set up and meant. */
export interface TrialShot {
  readonly trial: TrialName;
  readonly stroke: MeantStroke;
  readonly setup: TrialSetup;
}

/** Every shot of every trial that can be done on a table, from the break end and back. */
export function shotsToDo(bed: TrialBed): readonly TrialShot[] {
  return ROWS.flatMap(({ name, shots }) => shots(bed).map((shot) => ({ trial: name, ...shot })));
}
