import type { ShelfName, Shelves } from '../records';
import type { Contents, ImportPlan } from '../store-port';
import type { Backup } from './parse-backup';
import { attemptRows, deskRows, recordRows, setAsideRows } from './plan-rows';
import { planStore } from './plan-store';

/**
 * What an import would do. In a merge the backup's record stands where both have one, and so does
 * its attempt, unless the present one has come further since, and its position, unless the present
 * one was changed later; the present desk stays.
 */
export function planImport(
  current: Contents,
  { contents: given, repairs }: Backup,
  mode: ImportPlan['mode'],
): ImportPlan {
  const isMerge = mode === 'merge';
  const shelf = <S extends ShelfName>(name: S) =>
    planStore<Shelves[S]>(
      recordRows(current.shelves[name]),
      recordRows(given.shelves[name]),
      isMerge,
    );
  const shelves = {
    cues: shelf('cues'),
    cloths: shelf('cloths'),
    balls: shelf('balls'),
    tables: shelf('tables'),
  };
  const attempts = planStore(
    attemptRows(current.attempts),
    attemptRows(given.attempts),
    isMerge,
    (here, there) => here.stepsDone.length > there.stepsDone.length,
  );
  const positions = planStore(
    recordRows(current.positions),
    recordRows(given.positions),
    isMerge,
    (here, there) => here.changedAtMs > there.changedAtMs,
  );
  const desk = planStore(deskRows(current.desk), deskRows(given.desk), isMerge, () => true);
  const setAside = planStore(setAsideRows(current.setAside), setAsideRows(given.setAside), isMerge);
  return {
    mode,
    changes: {
      cues: shelves.cues.changes,
      cloths: shelves.cloths.changes,
      balls: shelves.balls.changes,
      tables: shelves.tables.changes,
      attempts: attempts.changes,
      positions: positions.changes,
      desk: desk.changes,
      'set-aside': setAside.changes,
    },
    repairs: repairs.filter(({ store }) => store !== 'desk' || !isMerge),
    toPut: {
      shelves: {
        cues: shelves.cues.toPut,
        cloths: shelves.cloths.toPut,
        balls: shelves.balls.toPut,
        tables: shelves.tables.toPut,
      },
      attempts: attempts.toPut,
      positions: positions.toPut,
      desk: desk.toPut[0] ?? null,
      setAside: setAside.toPut,
    },
  };
}
