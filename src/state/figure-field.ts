import { heldWithin, type Range } from '../engine/numerics/range';
import { numberAt, withNumberAt } from '../store/number-at';
import type { Preferences, ShelfName, Shelves } from '../store/records';
import type { UnitFacts } from '../units/unit-facts';
import type { Records } from './measure/parts-played';
import { type ShownField, shownFields } from './shown-fields';

/** What a figure is to a player: something seen on the table, a size of the thing, or the engine's own. */
export type FigureKind = 'felt' | 'size' | 'engine';

/** What figures are told of and in. */
export interface FigureSetting {
  readonly inPlay: Records;
  readonly units: Pick<Preferences, 'lengthUnit' | 'distanceUnit' | 'speedUnit'>;
}

/** A figure of a shelf's records, in the unit shown: how it is read, and what writes it. */
export interface FigureField<S extends ShelfName> {
  /** Dotted: a number's own, or `felt.` and its name. */
  readonly path: string;
  readonly label: string;
  readonly hint: string;
  readonly facts: UnitFacts;
  readonly kind: FigureKind;
  /** The numbers of the record that it writes. */
  readonly writes: readonly string[];
  read(record: Shelves[S]): number;
  rangeOf(record: Shelves[S]): Range;
  /** @param figure within the range */
  write(record: Shelves[S], figure: number): Shelves[S];
}

/** The numbers of a shelf's records as they are. */
export function plainFields<S extends ShelfName>(
  shelf: S,
  { units }: FigureSetting,
): readonly FigureField<S>[] {
  return shownFields(shelf, units).map((field) => ({
    path: field.path,
    label: field.label,
    hint: field.hint,
    facts: field.facts,
    kind: field.isOwn ? 'size' : 'engine',
    writes: [field.path],
    read(record) {
      const valueSi = numberAt(record, field.path);
      if (valueSi === null) throw new RangeError(`${field.path} is missing from ${record.id}`);
      return figureOf(valueSi, field);
    },
    rangeOf: () => ({
      min: figureOf(field.range.min, field),
      max: figureOf(field.range.max, field),
    }),
    write: (record, figure) =>
      withNumberAt(record, field.path, heldWithin(field.range, figure / field.shownPerSi)),
  }));
}

/** An SI value in the unit shown. */
export function figureOf(valueSi: number, { shownPerSi }: Pick<ShownField, 'shownPerSi'>): number {
  return clean(valueSi * shownPerSi);
}

/** A figure free of what multiplying leaves behind. */
export function clean(figure: number, digits = 12): number {
  return Number(figure.toPrecision(digits));
}
