import type { KitKnowledge } from '../../engine/fit/kit-knowledge';
import { squirtAngle } from '../../engine/impacts/strike';
import {
  type KitQuantity,
  QUANTITIES,
  QUANTITIES_OF,
  quantityIn,
  spreadUnit,
} from '../../engine/kit/kit-spread';
import { PART_OF } from '../../store/kit-fields';
import { SHELF_NAMES, type ShelfName } from '../../store/records';
import { QUANTITY_WORDS } from '../../words/quantity-words';

/** A figure and one standard deviation, in one unit. */
export interface SureFigure {
  readonly value: number;
  readonly sd: number;
}

/**
 * How sure one figure of a kit was before anything was read, and how sure it is now. The cue's is
 * in degrees at half a radius of side, the balls' friction that at a slip of 1 m/s; the tilts are in
 * m per m, away from the break end and to the right seen from there; the rest are coefficients.
 */
export interface Sureness {
  readonly quantity: KitQuantity;
  readonly shelf: ShelfName;
  readonly before: SureFigure;
  readonly now: SureFigure;
  readonly isMeasured: boolean;
}

/** What of a shelf's record a player can picture, in the order in which it is told. */
export function picturedOf(shelf: ShelfName): readonly KitQuantity[] {
  const own = QUANTITIES_OF[PART_OF[shelf]];
  return own.filter((quantity) => QUANTITY_WORDS[quantity].pictured !== undefined);
}

/** Known better than this share of what was assumed, a quantity counts as measured. */
export const MEASURED_SHARE = 0.9;

/** What is known of a kit beside what was assumed of it, in the order in which it is told. */
export function surenessOf(before: KitKnowledge, now: KitKnowledge): readonly Sureness[] {
  const pictured = SHELF_NAMES.flatMap((shelf) =>
    picturedOf(shelf).map((quantity) => ({ shelf, quantity })),
  );
  return pictured.map(({ shelf, quantity }) => ({
    quantity,
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
  const isCurve = QUANTITIES[quantity].numbers.length > 1;
  return { value, sd: sd * (isCurve ? value : spreadUnit(quantity, value)) };
}

/** By what the squirt does within a standard deviation of the mass ratio either way. */
function squirtFigure(massRatio: number, sd: number): SureFigure {
  const squirtDeg = (moved: number) =>
    (squirtAngle(0.5, massRatio * Math.exp(moved)) * 180) / Math.PI;
  return { value: squirtDeg(0), sd: (squirtDeg(-sd) - squirtDeg(sd)) / 2 };
}
