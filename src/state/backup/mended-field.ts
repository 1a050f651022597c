import type { ListName, Lists, Repair, Rows, StoreName } from '../../store/contents';
import { numberAt } from '../../store/number-at';
import { SHELF_NAMES } from '../../store/records';
import { LIST_NAMES, LISTS } from '../../store/stores';
import { formatQuantity } from '../../units/format-number';
import type { KitUnits } from '../../units/kit-units';
import { figureOf } from '../figure-field';
import { shownFields } from '../shown-fields';

/** A field that had to be mended, as a person knows it. */
export interface MendedField {
  readonly store: StoreName;
  /** Of the record; of an attempt, its trial. */
  readonly name: string;
  /** As the field is labelled where it is shown, or its dotted path. */
  readonly label: string;
  /** As figures are shown, or what was found in its place. */
  readonly was: string;
  readonly now: string;
}

/**
 * @param contents what was mended, as it is now
 * @param units those of whoever reads it
 */
export function mendedFields(
  repairs: readonly Repair[],
  contents: Lists,
  units?: KitUnits,
): readonly MendedField[] {
  if (repairs.length === 0) return [];
  const names = namesIn(contents);
  return repairs.map((repair) => ({
    store: repair.store,
    name: names.get(`${repair.store} ${repair.id}`) ?? repair.id,
    ...toldOf(repair, units),
  }));
}

/** What a person calls each row, by its store and id. */
function namesIn(lists: Lists): ReadonlyMap<string, string> {
  const named = <L extends ListName>(list: L, rows: readonly Rows[L][]) =>
    rows.map((row) => [`${list} ${row.id}`, LISTS[list].nameOf(row)] as const);
  return new Map(LIST_NAMES.flatMap((list) => named(list, lists[list])));
}

function toldOf(
  { store, field: path, was, now }: Repair,
  units?: KitUnits,
): Omit<MendedField, 'store' | 'name'> {
  const shelf = SHELF_NAMES.find((name) => name === store);
  const field = shelf && shownFields(shelf, units).find((one) => one.path === path);
  const told = (value: unknown, group: string) => {
    const valueSi = numberAt({ value }, 'value');
    if (!field || valueSi === null) return foundIn(value, group);
    return formatQuantity(figureOf(valueSi, field), field.facts).trim();
  };
  return { label: field?.label ?? path, was: told(was, 'unreadable'), now: told(now, 'as usual') };
}

/** Long enough to tell what it was. */
const LONGEST_FOUND = 40;

/** @param group what to say of anything with fields */
function foundIn(value: unknown, group: string): string {
  if (value === undefined || value === null || value === '') return 'nothing';
  if (typeof value === 'object') return Object.keys(value).length === 0 ? 'nothing' : group;
  return `“${String(value).slice(0, LONGEST_FOUND)}”`;
}
