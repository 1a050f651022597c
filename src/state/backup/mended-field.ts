import { numberAt } from '../../store/number-at';
import { SHELF_NAMES } from '../../store/shelf-names';
import type { Contents, Repair, StoreName } from '../../store/store-port';
import { formatQuantity } from '../../units/format-number';
import type { KitUnits } from '../../units/kit-units';
import { findField } from '../kit-edit';
import { figureOf } from '../kit-figure';

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

/** What was mended, as it is now. */
type MendedContents = Pick<Contents, 'shelves' | 'attempts' | 'positions'>;

/**
 * @param contents what was mended, as it is now
 * @param units those of whoever reads it
 */
export function mendedFields(
  repairs: readonly Repair[],
  contents: MendedContents,
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
function namesIn({ attempts, positions, shelves }: MendedContents): ReadonlyMap<string, string> {
  const trials = attempts.map(({ id, shot }) => ({ id, name: shot.trial }));
  const stores = { ...shelves, positions, attempts: trials };
  return new Map(
    Object.entries(stores).flatMap(([store, rows]) =>
      rows.map(({ id, name }) => [`${store} ${id}`, name] as const),
    ),
  );
}

function toldOf(
  { store, field: path, was, now }: Repair,
  units?: KitUnits,
): Omit<MendedField, 'store' | 'name'> {
  const shelf = SHELF_NAMES.find((name) => name === store);
  const field = shelf ? findField(shelf, path, units) : null;
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
