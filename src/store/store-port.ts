import type {
  ContentStore,
  Contents,
  ListName,
  Quarantined,
  Repair,
  Rows,
  StoreName,
} from './contents';
import type { Desk } from './records';
import type { Elsewhere } from './tabs/elsewhere';

/** Everything the app keeps as it was loaded, and what that took. */
export interface Loaded extends Omit<Contents, 'setAside'> {
  readonly repairs: readonly Repair[];
  /** What this load set aside; nothing set aside earlier. */
  readonly quarantined: readonly Quarantined[];
}

/** What an import would do to the rows of one store, by their names. */
export interface StoreChanges {
  readonly added: readonly string[];
  readonly changed: readonly string[];
  readonly removed: readonly string[];
  /** As they are, whether or not the backup has them too. */
  readonly left: readonly string[];
}

/** The same, and what is written: in a merge what is new, else all that is given. */
export interface PlannedRows<Row> {
  readonly changes: StoreChanges;
  readonly toPut: readonly Row[];
}

/** What an import will do, for a person to agree to before any of it is done. */
export interface ImportPlan {
  /** A merge removes nothing; a replacement leaves what the backup says and nothing else. */
  readonly mode: 'merge' | 'replace';
  readonly changes: { readonly [S in ContentStore]: StoreChanges };
  /** What had to be mended of what will be written. */
  readonly repairs: readonly Repair[];
  /** What will be written; the desk is null where the present one stays. */
  readonly toPut: Omit<Contents, 'desk'> & { readonly desk: Desk | null };
}

/**
 * Something the person should know about the storage.
 * - `blocked`: another tab holds an older database open; close it.
 * - `outdated`: a newer version of the app has the database; reload.
 * - `deleted`: the database was deleted under the page; the next change keeps all of it again.
 * - `replaced`: another tab exchanged everything for something else; reload.
 * - `closed`: the browser closed the database; it is reopened by itself.
 * - `not-kept`: no storage here, so nothing outlives this visit.
 * - `not-opened`: there is storage, and it could not be opened; reload.
 * - `full`: there is no room for what is on screen.
 * - `write-failed`: what is on screen could not be saved for another reason.
 * - `mended`: something was damaged, and is set aside as it was found.
 */
export type StoreNoticeKind =
  | 'blocked'
  | 'outdated'
  | 'deleted'
  | 'replaced'
  | 'closed'
  | 'not-kept'
  | 'not-opened'
  | 'full'
  | 'write-failed'
  | 'mended';

export interface StoreNotice {
  readonly kind: StoreNoticeKind;
  /** Where what is not kept yet belongs. */
  readonly unsaved: readonly StoreName[];
}

/** Why something could not be written: there is no room, what is on screen is out of date, or other. */
export type WriteFailure = 'full' | 'outdated' | 'replaced' | 'unavailable';

/** Why nothing could be read: a newer version of the app has the database open, or other. */
export type ReadFailure = 'newer-open' | 'not-read';

/** Why anything was not done. */
export type StoreFailure = WriteFailure | ReadFailure | 'last-on-shelf' | 'nothing-kept';

export type WriteResult = { readonly ok: true } | Failed<WriteFailure>;

/** The only record of a shelf stays: there must be something to play with. */
export type DeleteResult = WriteResult | Failed<'last-on-shelf'>;

/** An import is not undone where there has been none, or it was under an older layout. */
export type RestoreResult = WriteResult | Failed<'nothing-kept'>;

/** Not done, and why. */
export interface Failed<Reason extends StoreFailure = WriteFailure> {
  readonly ok: false;
  readonly reason: Reason;
}

/** A copy of everything from before an update of the app or an import, made valid. */
export interface FormerCopy {
  readonly reason: 'upgrade' | 'import';
  readonly atMs: number;
  readonly contents: Contents;
}

export type ReadResult = { readonly ok: true; readonly contents: Contents } | Failed<ReadFailure>;

/**
 * The one way in and out of what the app keeps. Load once before anything is written: the load
 * finds out whether there is storage at all. The promises never reject.
 */
export interface StorePort {
  /** False where nothing outlives this visit. */
  readonly keeps: boolean;
  loadAll(): Promise<Loaded>;
  put<L extends ListName>(list: L, row: Rows[L]): Promise<WriteResult>;
  /** Refuses the last record of a shelf; deleting a row that is not there succeeds. */
  delete(list: ListName, id: string): Promise<DeleteResult>;
  saveDesk(desk: Desk): Promise<WriteResult>;
  /**
   * Notes the desk at once, without waiting, for when the page is going away and a save may not
   * finish. The next load prefers it to what was saved before.
   */
  draftDesk(desk: Desk): void;
  /** Tries again to save what could not be, of this page and of earlier ones. */
  saveUnsaved(): Promise<void>;
  /** Everything at one moment, as the next load would have it; writes nothing. */
  readAll(): Promise<ReadResult>;
  /**
   * Does what was planned, all of it or nothing, and keeps what was there before. What is on screen
   * is then out of date: load again before anything else is saved.
   */
  importBackup(plan: ImportPlan): Promise<WriteResult>;
  /** When the last import was done that can still be undone; null where there is none. */
  lastImportMs(): Promise<number | null>;
  /**
   * Puts back what was there before the last import, and keeps what is there now in its stead, so
   * that undoing can be undone. Load again afterwards.
   */
  undoImport(): Promise<RestoreResult>;
  /** What was here before updates and the last import, the newest first. */
  formerCopies(): Promise<readonly FormerCopy[]>;
  /** What other tabs do to the rows on screen; returns how to stop listening. */
  onElsewhere(listener: (news: Elsewhere) => void): () => void;
  /** Answers what is to become of a row changed here and deleted elsewhere: wanted back, or not. */
  answerElsewhere(store: StoreName, id: string, isWanted: boolean): void;
  /** Notices that hold now and from now on, and which are over; returns how to stop listening. */
  onNotice(
    listener: (notice: StoreNotice) => void,
    onOver?: (kind: StoreNoticeKind) => void,
  ): () => void;
}
