import type { FitReport } from '../../engine/fit/fit-report';
import type { KitQuantity } from '../../engine/kit/kit-spread';
import { PART_OF } from '../../store/kit-fields';
import type { Named, ShelfName } from '../../store/records';
import { partName } from './parts-played';
import { figureOf, MEASURED_SHARE, picturedOf, type SureFigure } from './sureness';

/** One figure of a record in one of its eras. */
export interface EraFigure {
  readonly quantity: KitQuantity;
  readonly figure: SureFigure;
}

/** A record from one change to the next: what was measured of it in that time. */
export interface Era {
  /** The change it began with; null for the time before the first. */
  readonly since: Named['changes'][number] | null;
  /** Those that were measured; empty where none was. */
  readonly figures: readonly EraFigure[];
}

/** A record's eras, the present one first, with what the readings tell of each. */
export function erasOf(
  shelf: ShelfName,
  { id, changes }: Named,
  report: FitReport | null,
): readonly Era[] {
  return [null, ...changes]
    .map((since, era) => ({ since, figures: figuresOf(shelf, partName(id, era), report) }))
    .reverse();
}

function figuresOf(shelf: ShelfName, owner: string, report: FitReport | null): EraFigure[] {
  const own = (report?.estimates ?? []).filter(
    (estimate) => estimate.part === PART_OF[shelf] && estimate.owner === owner,
  );
  return picturedOf(shelf).flatMap((quantity) => {
    const estimate = own.find((one) => one.quantity === quantity);
    if (!estimate || estimate.sd >= MEASURED_SHARE * estimate.sdBefore) return [];
    return [{ quantity, figure: figureOf(quantity, estimate.value, estimate.sd) }];
  });
}

/** Two figures nearer than this many of their joint deviations show no change. */
const SEEN_SD = 2;

/** Whether a figure has changed by more than what is not known of the two. */
export function hasChanged(one: SureFigure, two: SureFigure): boolean {
  return Math.abs(one.value - two.value) > SEEN_SD * Math.hypot(one.sd, two.sd);
}
