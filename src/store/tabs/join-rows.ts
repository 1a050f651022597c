import { writeValue } from '../backup/value-text';
import { isPlainObject } from '../mend';
import { numberAt } from '../number-at';
import { isSame } from '../same-value';

/** Two changed states of one row as one. */
export interface Joined<T> {
  readonly row: T;
  /** Whether both changed the same field, each otherwise: it then stands as in mine. */
  readonly isClash: boolean;
}

/** What is one thing, whatever it consists of: half of each would be nobody's. */
const WHOLE: readonly string[] = ['heldShot', 'typed', 'zone', 'cueBall', 'position'];

/** What only tells of other changes: where both changed it, nothing is lost. */
const BOOKKEEPING: readonly string[] = ['changedAtMs', 'typed', 'modelVersion'];

type Join = (
  was: unknown,
  mine: unknown,
  theirs: unknown,
  field: string,
  isWhole: boolean,
) => unknown;

/**
 * Joins two changed states of a row, field by field, by what both were before (a three-way merge).
 * A list is joined by its entries, each of them one thing. Undefined stands for no row, or no field.
 */
export function joinRows<T>(was: T, mine: T, theirs: T): Joined<T> {
  let isClash = false;
  const join: Join = (before, here, there, field, isWhole) => {
    if (isSame(here, there) || isSame(there, before)) return here;
    if (isSame(here, before)) return there;
    const sides = [before, here, there] as const;
    if (!isWhole && sides.every(isPlainObject)) return fieldsOf(joinParts(sides, join));
    if (!isWhole && sides.every(Array.isArray)) return listOf(joinParts(sides, join));
    isClash ||= !BOOKKEEPING.includes(field);
    return here;
  };
  return { row: join(was, mine, theirs, '', false) as T, isClash };
}

type Parts = ReadonlyMap<string, unknown>;

/** In the order of mine, then what only theirs has. */
function joinParts(sides: readonly [unknown, unknown, unknown], join: Join): Parts {
  const [was, mine, theirs] = [partsOf(sides[0]), partsOf(sides[1]), partsOf(sides[2])];
  const isList = Array.isArray(sides[1]);
  const joined = [...new Set([...mine.keys(), ...theirs.keys()])].map((key) => {
    const isWhole = isList || WHOLE.includes(key);
    return [key, join(was.get(key), mine.get(key), theirs.get(key), key, isWhole)] as const;
  });
  return new Map(joined.filter(([, part]) => part !== undefined));
}

/** Fields by their names; entries of a list by theirs, or else by all they say. */
function partsOf(value: unknown): Parts {
  if (!Array.isArray(value)) return new Map(Object.entries(Object(value)));
  return new Map(value.map((entry) => [writeValue(nameOf(entry)), entry]));
}

function nameOf(entry: unknown): unknown {
  return isPlainObject(entry) && 'name' in entry ? entry.name : entry;
}

function fieldsOf(parts: Parts): Record<string, unknown> {
  return Object.fromEntries(parts);
}

/** Entries that tell when they were made stand in that order. */
function listOf(parts: Parts): readonly unknown[] {
  const timeOf = (entry: unknown) => numberAt(entry, 'atMs') ?? 0;
  return [...parts.values()].sort((one, other) => timeOf(one) - timeOf(other));
}
