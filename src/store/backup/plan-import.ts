import type { ContentRows, ContentStore, Contents } from '../contents';
import type { ImportPlan, PlannedRows } from '../store-port';
import { CONTENT_STORES, ofStores, STORES, storesOf } from '../stores';
import type { Backup } from './parse-backup';
import { writeValue } from './value-text';

/**
 * What an import would do. In a merge the backup's row stands where both have one, unless its store
 * says that the present one stays; a store that the backup has no row of is left as it is.
 */
export function planImport(
  current: Contents,
  { contents, told, repairs }: Backup,
  mode: ImportPlan['mode'],
): ImportPlan {
  const isMerge = mode === 'merge';
  const [present, given] = [storesOf(current), storesOf(contents)];
  const planned = ofStores<'planned'>((name) =>
    planStore(name, present[name], isMerge && !told.includes(name) ? [] : given[name], isMerge),
  );
  const { desk, 'set-aside': setAside, ...lists } = ofStores<'rows'>((name) => planned[name].toPut);
  const changes = CONTENT_STORES.map((name) => [name, planned[name].changes]);
  return {
    mode,
    changes: Object.fromEntries(changes) as ImportPlan['changes'],
    repairs: repairs.filter(({ store }) => store !== 'desk' || !isMerge),
    toPut: { ...lists, desk: desk[0] ?? null, setAside },
  };
}

function planStore<S extends ContentStore>(
  name: S,
  presentRows: readonly ContentRows[S][],
  givenRows: readonly ContentRows[S][],
  isMerge: boolean,
): PlannedRows<ContentRows[S]> {
  const { idOf, nameOf, staysInMerge } = STORES[name];
  const keyed = (rows: readonly ContentRows[S][]) => rows.map((row) => ({ id: idOf(row), row }));
  const [present, given] = [keyed(presentRows), keyed(givenRows)];
  const here = new Map(present.map(({ id, row }) => [id, row]));
  const givenIds = new Set(given.map(({ id }) => id));
  const isChanged = ({ id, row }: (typeof given)[number]) => {
    const mine = here.get(id);
    if (mine === undefined || writeValue(mine) === writeValue(row)) return false;
    return !(isMerge && staysInMerge(mine, row));
  };
  const added = given.filter(({ id }) => !here.has(id));
  const changed = given.filter(isChanged);
  const removed = isMerge ? [] : present.filter(({ id }) => !givenIds.has(id));
  const moved = new Set([...changed, ...removed].map(({ id }) => id));
  const left = present.filter(({ id }) => !moved.has(id));
  const namesOf = (rows: typeof given) => rows.map(({ row }) => nameOf(row));
  return {
    changes: {
      added: namesOf(added),
      changed: namesOf(changed),
      removed: namesOf(removed),
      left: namesOf(left),
    },
    toPut: (isMerge ? [...added, ...changed] : given).map(({ row }) => row),
  };
}
