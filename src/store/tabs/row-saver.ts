import type { StoreName } from '../contents';
import { attemptOn, type DatabaseDoor } from '../database-door';
import { writeFailure } from '../database-errors';
import type { Database } from '../database-schema';
import { isPlainObject } from '../mend';
import type { Note } from '../note';
import type { NoticeBoard } from '../notice-board';
import type { DeleteResult, Failed } from '../store-port';
import type { UnsavedNotes } from '../unsaved-notes';
import { putAllRows, readRow, type Saved, type Settlement, saveNote } from '../write-rows';
import type { Clash, Elsewhere } from './elsewhere';
import {
  changedFrom,
  changeOf,
  createSharedRows,
  inTurn,
  isAhead,
  type SharedRow,
  takeIn,
} from './shared-rows';
import { isWritten, type TabChannel } from './tab-channel';

/** A row, and where it is kept. */
export interface KeptAt {
  readonly store: StoreName;
  readonly id: string;
  readonly row: unknown;
}

/** Saves rows one by one, and keeps them the same as in other tabs. */
export interface RowSaver {
  /** From now on these are the rows on screen, of these contents. */
  begin(era: string, rows: readonly KeptAt[]): void;
  /** Saves a row as it is on screen now, or its deletion. */
  save(store: StoreName, id: string, row?: unknown): Promise<DeleteResult>;
  /** Notes a row at once, and does not save it. */
  draft(row: KeptAt): void;
  /** Tries again what is noted. */
  saveUnsaved(): Promise<void>;
  /** The database is empty: all that is on screen goes into it, or else waits to be saved. */
  refill(database: Database): Promise<void>;
  /** Notes what is being saved, for it may not be. */
  noteUnderWay(): void;
  /** Tells of a row that is kept as a copy of what another tab had made of one. */
  tellOfCopy(copy: KeptAt): void;
  onElsewhere(listener: (news: Elsewhere) => void): () => void;
  answer(store: StoreName, id: string, isWanted: boolean): void;
}

export interface RowSaverPorts {
  readonly door: DatabaseDoor;
  readonly board: NoticeBoard;
  readonly notes: UnsavedNotes;
  /** Null where there are no other tabs. */
  readonly channel: TabChannel | null;
}

export function createRowSaver({ door, board, notes, channel }: RowSaverPorts): RowSaver {
  let era = '';
  const rows = createSharedRows();
  const underWay = new Set<{ readonly shared: SharedRow; mark: number }>();
  const asked = new Set<SharedRow>();
  let refilling: readonly Note[] = [];
  const clashes: Clash[] = [];
  const listeners = new Set<(news: Elsewhere) => void>();
  let begun = () => {};
  const isBegun = new Promise<void>((resolve) => {
    begun = resolve;
  });

  const noteOf = ({ store, id, shown, common, lost }: SharedRow) => ({
    ...{ store, id, era, by: notes.by, was: common ?? lost },
    ...(shown === undefined ? {} : { row: shown }),
  });
  const tellAll = (news: Elsewhere) => {
    for (const listener of listeners) listener(news);
  };
  const tellClash = (clash: Clash) => {
    clashes.push(clash);
    tellAll(clash);
  };
  const tellOf = (kind: Clash['kind'], { store, id, shown }: SharedRow, copy: unknown = null) =>
    tellClash({ kind, store, id, name: nameOf(shown), copyName: nameOf(copy) });
  /** Takes in what the database has, and tells where that changes what is on screen. */
  const take = (shared: SharedRow, from: unknown, now: unknown) => {
    const was = takeIn(shared, from, now);
    if (was !== shared.shown) tellAll(changeOf(shared, was));
  };
  const settle = (shared: SharedRow, note: Note, from: unknown, { settled }: Settlement) => {
    take(shared, from, 'row' in settled ? settled.row : undefined);
    if (settled.kind === 'deleted') shared.lost = undefined;
    if (settled.kind === 'stays') tellOf('stays', shared);
    else channel?.post({ store: note.store, id: note.id });
    if (settled.kind !== 'put' || !settled.isClash) return;
    const { copy } = settled;
    if (copy) {
      const other = rows.of(note.store, copy.id);
      take(other, changedFrom(other), copy);
      channel?.post({ store: note.store, id: copy.id });
    }
    tellOf('both', shared, copy);
  };
  /** It waits until it is answered whether it is wanted; a visit that does not ask sets it aside. */
  const ask = (shared: SharedRow, note: Note, mark: number) => {
    if (shared.shown === undefined) {
      Object.assign(shared, { shown: note.row, lost: note.was });
      tellAll(changeOf(shared, null));
    }
    notes.drop(note, mark);
    notes.add(noteOf(shared), mark);
    if (asked.has(shared)) return;
    asked.add(shared);
    tellOf('gone', shared);
  };
  const tellUnsaved = (failed: Failed) => {
    const kind = failed.reason === 'unavailable' ? 'write-failed' : failed.reason;
    const unsaved = notes.mine.map(({ store }) => store);
    board.raise(kind, unsaved);
  };
  const fail = (note: Note, mark: number, failed: Failed): Failed => {
    notes.add(note, mark);
    tellUnsaved(failed);
    return failed;
  };
  const lower = () => {
    board.lower('closed', 'deleted');
    const isAsked = ({ store, id }: Note) => asked.has(rows.of(store, id));
    if (notes.mine.every(isAsked)) board.lower('full', 'write-failed');
  };
  const conclude = (shared: SharedRow, note: Note, given: Note | undefined, result: Saved) => {
    if (result.ok) settle(shared, note, given ? changedFrom(shared) : note.row, result);
    else shared.shown ??= shared.common;
    if (asked.delete(shared)) tellOf('answered', shared);
  };
  /** @param given what is to be saved; left out, what is on screen */
  const carryOut = (shared: SharedRow, given?: Note): Promise<DeleteResult> => {
    const saving = { shared, mark: notes.mark() };
    underWay.add(saving);
    return inTurn(shared, async () => {
      const note = { ...(given ?? noteOf(shared)), era };
      const result = await attemptOn(door, (database) => saveNote(database, note));
      underWay.delete(saving);
      if (isFailed(result)) return fail(note, saving.mark, result);
      if (result.ok && result.settled.kind === 'gone') {
        ask(shared, note, saving.mark);
      } else {
        conclude(shared, note, given, result);
        notes.drop(note, saving.mark);
      }
      lower();
      return result.ok ? { ok: true } : result;
    });
  };
  const look = async (store: StoreName, id: string) => {
    const shared = rows.of(store, id);
    await inTurn(shared, async () => {
      const read = await attemptOn(door, (database) => readRow(database, { store, id, era }));
      if (!read.ok) return;
      take(shared, changedFrom(shared), read.row);
      // It is there again: what was asked is answered.
      if (asked.has(shared) && read.row !== undefined) void carryOut(shared);
    });
  };
  channel?.onMessage(async (message) => {
    await isBegun;
    if (isWritten(message)) await look(message.store, message.id);
  });

  return {
    begin(now, loaded) {
      era = now;
      rows.clear();
      asked.clear();
      for (const { store, id, row } of loaded) {
        const shared = rows.of(store, id);
        shared.common = row;
        shared.shown = row;
      }
      begun();
    },
    save(store, id, row) {
      const shared = rows.of(store, id);
      shared.shown = row;
      return carryOut(shared);
    },
    draft: ({ store, id, row }) => notes.add({ ...noteOf(rows.of(store, id)), row }),
    async saveUnsaved() {
      for (const note of notes.all()) {
        const shared = rows.of(note.store, note.id);
        if (note.era !== era || asked.has(shared)) continue;
        const isMine = note.by === notes.by && isAhead(shared);
        await carryOut(shared, isMine ? undefined : note);
      }
    },
    async refill(database) {
      const all = rows.all().filter(({ shown }) => shown !== undefined);
      refilling = all.map(({ store, id, shown }) => ({ store, id, era, row: shown }));
      for (const shared of rows.all())
        Object.assign(shared, { common: undefined, lost: undefined });
      try {
        await putAllRows(database, refilling, era);
        for (const [at, shared] of all.entries()) shared.common ??= refilling[at]?.row;
      } catch (error) {
        // None of it was put: it goes the way of whatever is not saved yet.
        era = '';
        notes.addAll(refilling.map((note) => ({ ...note, era })));
        tellUnsaved(writeFailure(error));
      }
      refilling = [];
    },
    noteUnderWay() {
      notes.addAll(refilling);
      for (const saving of underWay) {
        notes.add(noteOf(saving.shared));
        saving.mark = notes.mark();
      }
    },
    tellOfCopy: ({ row, ...at }) =>
      tellClash({ kind: 'both', ...at, name: '', copyName: nameOf(row) }),
    onElsewhere(listener) {
      for (const clash of clashes) listener(clash);
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    answer(store, id, isWanted) {
      const shared = rows.of(store, id);
      if (!asked.has(shared)) return;
      shared.lost = isWanted ? undefined : (shared.common ?? shared.lost);
      shared.common = undefined;
      if (isWanted) {
        void carryOut(shared);
        return;
      }
      const was = shared.shown;
      shared.shown = undefined;
      notes.drop({ store, id, by: notes.by });
      asked.delete(shared);
      tellOf('answered', shared);
      tellAll(changeOf(shared, was));
    },
  };
}

function isFailed(result: Saved | Failed): result is Failed {
  return !result.ok && result.reason !== 'last-on-shelf';
}

function nameOf(row: unknown): string {
  return isPlainObject(row) && typeof row.name === 'string' ? row.name : '';
}
