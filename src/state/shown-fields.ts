import type { Range } from '../engine/numerics/range';
import { DEFAULT_PREFERENCES } from '../store/default-desk';
import { type KitFieldPath, kitFields } from '../store/kit-fields';
import type { ShelfName } from '../store/records';
import type { KitUnits, ShownAs } from '../units/kit-units';
import { NUMBER_WORDS, type NumberWords } from '../words/kit-words';

/** A number of a record that a person can read and change, in the units that they like. */
export interface ShownField extends ShownAs, Omit<NumberWords, 'shownIn'> {
  /** Dotted where nested: `ballFriction.a`. */
  readonly path: string;
  /** Accepted values, in SI. */
  readonly range: Range;
}

const WORDS: { readonly [P in KitFieldPath<ShelfName>]: NumberWords } = NUMBER_WORDS;

/** The numbers of a shelf, in the order to show them. */
export function shownFields(
  shelf: ShelfName,
  units: KitUnits = DEFAULT_PREFERENCES,
): readonly ShownField[] {
  return kitFields(shelf).map(({ path, range }) => {
    const { shownIn, ...words } = WORDS[path];
    return { path, range, ...words, ...shownIn(units) };
  });
}

/** A number of a shelf by its dotted path; a caller's mistake throws. */
export function shownField(shelf: ShelfName, path: string, units?: KitUnits): ShownField {
  const found = shownFields(shelf, units).find((field) => field.path === path);
  if (found === undefined) throw new RangeError(`${path} is no number of ${shelf}`);
  return found;
}
