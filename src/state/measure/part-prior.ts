import type { KitPrior } from '../../engine/fit/fit-question';
import type { KitKnowledge } from '../../engine/fit/kit-knowledge';
import type { Kit } from '../../engine/kit/kit';
import {
  KIT_QUANTITIES,
  type KitSpread,
  QUANTITIES,
  QUANTITIES_OF,
  UNMEASURED,
} from '../../engine/kit/kit-spread';
import { PART_OF } from '../../store/kit-fields';
import { kitOf } from '../../store/kit-of';
import { type BallSet, SHELF_NAMES, type ShelfName, type Shelves } from '../../store/records';
import type { Played } from './parts-played';

/** What is taken to be known of one record before anything was read on it. */
export interface PartPrior<S extends ShelfName> {
  /** Numbers to take in place of the record's own. */
  readonly numbers: Partial<Shelves[S]>;
  /** Only that of the record's own quantities counts. */
  readonly spread: KitSpread;
}

export type PartPriors = { readonly [S in ShelfName]: PartPrior<S> };

const OWN_NUMBERS = { numbers: {}, spread: UNMEASURED } as const;

/** Records as they stand, of which nothing was measured. */
export const OWN_PRIORS: PartPriors = {
  cues: OWN_NUMBERS,
  cloths: OWN_NUMBERS,
  balls: OWN_NUMBERS,
  tables: OWN_NUMBERS,
};

/** The prior of a whole kit out of those of its parts. */
export function kitPriorOf({ parts, records }: Played, priors: PartPriors): KitPrior {
  const numbersOf = <S extends ShelfName>(shelf: S): Shelves[S] => ({
    ...records[shelf],
    ...priors[shelf].numbers,
  });
  const spread = SHELF_NAMES.flatMap((shelf) =>
    QUANTITIES_OF[PART_OF[shelf]].map((name) => [name, priors[shelf].spread[name]] as const),
  );
  return {
    parts,
    kit: kitOf(numbersOf('cues'), numbersOf('cloths'), numbersOf('balls'), numbersOf('tables')),
    spread: { ...UNMEASURED, ...Object.fromEntries(spread) },
  };
}

/** The numbers of a record that are measured, as a kit has them. */
function measuredNumbers(shelf: ShelfName, kit: Kit, balls: BallSet): object {
  const measured = QUANTITIES_OF[PART_OF[shelf]].flatMap((name) => QUANTITIES[name].numbers);
  const numbers = Object.fromEntries(measured.map(({ key }) => [key, kit[key]]));
  if (shelf !== 'cues') return numbers;
  // A kit counts the cue against its cue ball, a record against an ordinary one: see `kitOf`.
  return { ...numbers, massRatio: kit.massRatio / balls.cueBallMassRatio };
}

/** @param balls those whose numbers were in the middle of the fit's prior */
export function measuredPrior<S extends ShelfName>(
  shelf: S,
  { kit, spread }: KitKnowledge,
  balls: BallSet,
): PartPrior<S> {
  const numbers = measuredNumbers(shelf, kit, balls) as Partial<Shelves[S]>;
  return { numbers, spread };
}

/**
 * What is known of a record that starts from another's measurements: known to be alike, not to be
 * the same, so it may lie off by half of what is not known of any (our judgement).
 */
export function alike<S extends ShelfName>({ numbers, spread }: PartPrior<S>): PartPrior<S> {
  const wider = KIT_QUANTITIES.map((name) => [
    name,
    Math.hypot(spread[name], UNMEASURED[name] / 2),
  ]);
  return { numbers, spread: { ...UNMEASURED, ...Object.fromEntries(wider) } };
}
