import type { StoreName } from '../contents';
import { isSame } from '../same-value';
import type { RowChange } from './elsewhere';
import { joinRows } from './join-rows';

/** One row as it is shared with other tabs. */
export interface SharedRow {
  readonly store: StoreName;
  readonly id: string;
  /** What this page and the database last agreed on; undefined: that there is none. */
  common: unknown;
  /** What is on screen here. */
  shown: unknown;
  /** What it was before another tab deleted it; undefined where none did. */
  lost: unknown;
  /** Settles when all that was asked for so far is done. */
  last: Promise<unknown>;
}

/** What this page shows and what it knows of the database, row by row. */
export interface SharedRows {
  all(): readonly SharedRow[];
  of(store: StoreName, id: string): SharedRow;
  /** Forgets everything. */
  clear(): void;
}

export function createSharedRows(): SharedRows {
  const rows = new Map<string, SharedRow>();
  return {
    all: () => [...rows.values()],
    of(store, id) {
      const key = `${store} ${id}`;
      const row = rows.get(key) ?? {
        ...{ store, id, common: undefined, shown: undefined, lost: undefined },
        last: Promise.resolve(),
      };
      rows.set(key, row);
      return row;
    },
    clear: () => rows.clear(),
  };
}

/** Does work on a row once all that was asked for before is done. */
export function inTurn<R>(shared: SharedRow, work: () => Promise<R>): Promise<R> {
  const mine = shared.last.then(work);
  shared.last = mine;
  return mine;
}

/**
 * Takes in what the database has now. What was changed here since `from` stays on screen, and counts
 * as a change of what it was changed from, so that saving it finds out whether two tabs did the same.
 * @param from the state that what is on screen here was changed from
 * @returns what was on screen until now
 */
export function takeIn(shared: SharedRow, from: unknown, now: unknown): unknown {
  const was = shared.shown;
  shared.shown = joinRows(from, was, now).row;
  shared.common = joinRows(was, shared.shown, from).row;
  if (now !== undefined) shared.lost = undefined;
  else if (shared.shown === undefined) shared.lost ??= from;
  return was;
}

/** What is on screen here was changed from this. */
export function changedFrom({ common, shown, lost }: SharedRow): unknown {
  return shown === undefined ? common : (common ?? lost);
}

/** Whether something of it is on screen here and not in the database. */
export function isAhead({ common, shown }: SharedRow): boolean {
  return !isSame(common, shown);
}

/** From what was on screen to what is. */
export function changeOf({ store, id, shown }: SharedRow, was: unknown): RowChange {
  return { kind: 'row', store, id, was: was ?? null, row: shown ?? null } as RowChange;
}
