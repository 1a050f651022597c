import { heldWithin, type Range } from '../engine/numerics/range';
import { numberAt } from '../store/number-at';
import type { ShelfName, Shelves } from '../store/records';
import type { KitUnits } from '../units/kit-units';
import type { UnitFacts } from '../units/unit-facts';
import { type ShownField, shownFields } from './shown-fields';

/** A number of a record as a person reads it: figure and range in the unit shown. */
export interface KitFigure {
  readonly path: string;
  readonly label: string;
  /** What a larger number does, in one line. */
  readonly hint: string;
  readonly figure: number;
  readonly range: Range;
  readonly facts: UnitFacts;
}

/** The numbers of a record, in the order to show them. */
export function kitFigures<S extends ShelfName>(
  shelf: S,
  record: Shelves[S],
  units?: KitUnits,
): readonly KitFigure[] {
  return shownFields(shelf, units).map((field) => ({
    path: field.path,
    label: field.label,
    hint: field.hint,
    figure: figureAt(record, field),
    range: shownRange(field),
    facts: field.facts,
  }));
}

/** The number of a record that a field names, in the unit shown. */
export function figureAt<S extends ShelfName>(record: Shelves[S], field: ShownField): number {
  const valueSi = numberAt(record, field.path);
  if (valueSi === null) throw new RangeError(`${field.path} is missing from ${record.id}`);
  return figureOf(valueSi, field);
}

/** The range of a field in the unit shown. */
export function shownRange(field: ShownField): Range {
  return { min: figureOf(field.range.min, field), max: figureOf(field.range.max, field) };
}

/** An SI value in the unit shown, free of what multiplying leaves behind. */
export function figureOf(valueSi: number, field: ShownField): number {
  return Number((valueSi * field.shownPerSi).toPrecision(12));
}

/** A figure in the unit shown, in SI, held within the range. */
export function siOf(figure: number, field: ShownField): number {
  return heldWithin(field.range, figure / field.shownPerSi);
}
