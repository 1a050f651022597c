import type { FitReport } from '../../engine/fit/fit-report';
import type { KitQuantity } from '../../engine/kit/kit-spread';
import type { Named, ShelfName } from '../../store/records';
import { PART_OF, partName } from './parts-played';
import { figureOf, MEASURED_SHARE, type SureFigure, type SureName } from './sureness';

/** One figure of a record in one of its eras. */
export interface EraFigure {
  readonly name: SureName;
  readonly figure: SureFigure;
}

/** A record from one change to the next: what was measured of it in that time. */
export interface Era {
  /** The change it began with; null for the time before the first. */
  readonly since: Named['changes'][number] | null;
  /** Those that were measured; empty where none was. */
  readonly figures: readonly EraFigure[];
}

const TOLD_OF: { readonly [S in ShelfName]: readonly (readonly [SureName, KitQuantity])[] } = {
  cues: [['squirt', 'massRatio']],
  cloths: [
    ['slide', 'slideFriction'],
    ['roll', 'rollFriction'],
  ],
  balls: [
    ['throw', 'ballFriction'],
    ['bounce', 'ballRestitution'],
  ],
  tables: [
    ['tilt-along', 'bedSlopeAlong'],
    ['tilt-right', 'bedSlopeRight'],
  ],
};

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
  return TOLD_OF[shelf].flatMap(([name, quantity]) => {
    const estimate = own.find((one) => one.quantity === quantity);
    if (!estimate || estimate.sd >= MEASURED_SHARE * estimate.sdBefore) return [];
    return [{ name, figure: figureOf(quantity, estimate.value, estimate.sd) }];
  });
}

/** Two figures nearer than this many of their joint deviations show no change. */
const SEEN_SD = 2;

/** Whether a figure has changed by more than what is not known of the two. */
export function hasChanged(one: SureFigure, two: SureFigure): boolean {
  return Math.abs(one.value - two.value) > SEEN_SD * Math.hypot(one.sd, two.sd);
}
