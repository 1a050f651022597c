import type { StoreChanges } from '../store-port';
import type { Row } from './plan-rows';
import { writeValue } from './write-value';

/** What an import would do to one store. */
export interface PlannedStore<T> {
  readonly changes: StoreChanges;
  /** What is written: in a merge what is new, else all that is given. */
  readonly toPut: readonly T[];
}

/** @param staysInMerge whether, in a merge, a present row is kept over a given one that differs. */
export function planStore<T>(
  present: readonly Row<T>[],
  given: readonly Row<T>[],
  isMerge: boolean,
  staysInMerge: (here: T, there: T) => boolean = () => false,
): PlannedStore<T> {
  const here = new Map(present.map((row) => [row.id, row]));
  const givenIds = new Set(given.map(({ id }) => id));
  const isChanged = ({ id, value }: Row<T>) => {
    const row = here.get(id);
    if (!row || writeValue(row.value) === writeValue(value)) return false;
    return !(isMerge && staysInMerge(row.value, value));
  };
  const added = given.filter(({ id }) => !here.has(id));
  const changed = given.filter(isChanged);
  const removed = isMerge ? [] : present.filter(({ id }) => !givenIds.has(id));
  const moved = new Set([...changed, ...removed].map(({ id }) => id));
  const left = present.filter(({ id }) => !moved.has(id));
  return {
    changes: {
      added: namesOf(added),
      changed: namesOf(changed),
      removed: namesOf(removed),
      left: namesOf(left),
    },
    toPut: (isMerge ? [...added, ...changed] : given).map(({ value }) => value),
  };
}

const namesOf = (rows: readonly Row<unknown>[]) => rows.map(({ name }) => name);
