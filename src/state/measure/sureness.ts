import { quantityIn } from '../../engine/fit/estimates';
import type { KitKnowledge } from '../../engine/fit/kit-knowledge';
import { squirtAngle } from '../../engine/impacts/strike';
import type { KitQuantity } from '../../engine/kit/kit-spread';
import type { ShelfName } from '../../store/records';
import { SHELF_NAMES } from '../../store/shelf-names';

/** A figure and one standard deviation, in one unit. */
export interface SureFigure {
  readonly value: number;
  readonly sd: number;
}

/**
 * What a player can picture of a kit. `squirt` in degrees at half a radius of side; `throw` the
 * balls' friction at a slip of 1 m/s; the tilts in m per m, away from the break end and to the
 * right seen from there; the rest coefficients.
 */
export type SureName =
  | 'squirt'
  | 'slide'
  | 'roll'
  | 'throw'
  | 'bounce'
  | 'tilt-along'
  | 'tilt-right';

/** How sure one of these was before anything was read, and how sure it is now. */
export interface Sureness {
  readonly name: SureName;
  readonly shelf: ShelfName;
  readonly before: SureFigure;
  readonly now: SureFigure;
  readonly isMeasured: boolean;
}

interface SureSpec {
  readonly name: SureName;
  readonly shelf: ShelfName;
  readonly quantity: KitQuantity;
}

const SPECS: readonly SureSpec[] = [
  { name: 'squirt', shelf: 'cues', quantity: 'massRatio' },
  { name: 'slide', shelf: 'cloths', quantity: 'slideFriction' },
  { name: 'roll', shelf: 'cloths', quantity: 'rollFriction' },
  { name: 'throw', shelf: 'balls', quantity: 'ballFriction' },
  { name: 'bounce', shelf: 'balls', quantity: 'ballRestitution' },
  { name: 'tilt-along', shelf: 'tables', quantity: 'bedSlopeAlong' },
  { name: 'tilt-right', shelf: 'tables', quantity: 'bedSlopeRight' },
];

/** Known better than this share of what was assumed, a quantity counts as measured. */
export const MEASURED_SHARE = 0.9;

/** What is known of a kit beside what was assumed of it, in the order in which it is told. */
export function surenessOf(before: KitKnowledge, now: KitKnowledge): readonly Sureness[] {
  return SPECS.map(({ name, shelf, quantity }) => ({
    name,
    shelf,
    before: figureOf(quantity, quantityIn(before.kit, quantity), before.spread[quantity]),
    now: figureOf(quantity, quantityIn(now.kit, quantity), now.spread[quantity]),
    isMeasured: now.spread[quantity] < MEASURED_SHARE * before.spread[quantity],
  }));
}

/** The shelves of a kit of whose record anything was measured. */
export function measuredShelves(before: KitKnowledge, now: KitKnowledge): readonly ShelfName[] {
  const measured = surenessOf(before, now).filter(({ isMeasured }) => isMeasured);
  return SHELF_NAMES.filter((name) => measured.some(({ shelf }) => shelf === name));
}

/**
 * The figure that a quantity is told by.
 * @param sd of the quantity's logarithm; of slopes, m/m
 */
export function figureOf(quantity: KitQuantity, value: number, sd: number): SureFigure {
  if (quantity === 'massRatio') return squirtFigure(value, sd);
  if (quantity === 'bedSlopeAlong' || quantity === 'bedSlopeRight') return { value, sd };
  return { value, sd: value * sd };
}

/** By what the squirt does within a standard deviation of the mass ratio either way. */
function squirtFigure(massRatio: number, sd: number): SureFigure {
  const squirtDeg = (moved: number) =>
    (squirtAngle(0.5, massRatio * Math.exp(moved)) * 180) / Math.PI;
  return { value: squirtDeg(0), sd: (squirtDeg(-sd) - squirtDeg(sd)) / 2 };
}
