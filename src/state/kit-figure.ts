import type { Range } from '../engine/numerics/range';
import type { ShelfName, Shelves } from '../store/records';
import { feltFields } from './felt-fields';
import { type FigureField, type FigureSetting, plainFields } from './figure-field';

/** A figure of a record as a person reads it, in the unit shown. */
export interface KitFigure
  extends Pick<FigureField<ShelfName>, 'path' | 'label' | 'hint' | 'facts' | 'kind'> {
  readonly figure: number;
  readonly range: Range;
}

/** Everything of a shelf's records that can be read and changed: what is seen before what is reckoned with. */
export function figureFields<S extends ShelfName>(
  shelf: S,
  setting: FigureSetting,
): readonly FigureField<S>[] {
  return [...feltFields(shelf, setting), ...plainFields(shelf, setting)];
}

/** The figures of a record, in the order to show them. */
export function kitFigures<S extends ShelfName>(
  shelf: S,
  record: Shelves[S],
  setting: FigureSetting,
): readonly KitFigure[] {
  return figureFields(shelf, setting).map((field) => {
    const { path, label, hint, facts, kind } = field;
    return {
      path,
      label,
      hint,
      facts,
      kind,
      figure: field.read(record),
      range: field.rangeOf(record),
    };
  });
}
