import type { SharePort } from '../../../../src/sensors/share-file';
import { createStorageRoom } from '../../../../src/sensors/storage-room';
import { copyPlaces } from '../../../../src/state/backup/copy-places';
import { createSaveGate } from '../../../../src/state/backup/save-gate';
import { createBackupModel } from '../../../../src/state/backup-model';
import { findDigest } from '../../../../src/store/backup/backup-format';
import type { Contents } from '../../../../src/store/contents';
import { createMemoryStore } from '../../../../src/store/memory-store';
import { createNoticeBoard } from '../../../../src/store/notice-board';
import type { StorePort } from '../../../../src/store/store-port';
import { fill } from '../../../store/backup/import-text';
import { CONTENTS } from '../../../store/backup/invented-contents';

export const SAVED_AT_MS = new Date(2026, 0, 5, 23, 30).getTime();

/** A share sheet that rejects with an error of some name, once for each that is given. */
export function sheet(...refusals: readonly string[]) {
  const left = [...refusals];
  const shared: File[] = [];
  const port: SharePort = {
    prefersSheet: true,
    canShare: () => true,
    share: async (files) => {
      const refusal = left.shift();
      if (refusal) throw new DOMException('', refusal);
      shared.push(...files);
    },
    download: (file) => void shared.push(file),
  };
  return { port, shared };
}

/** Downloads only, as in a tab by mouse. */
export function downloads() {
  const { port, shared } = sheet();
  return { port: { ...port, prefersSheet: false }, shared };
}

export interface OpenOptions {
  readonly contents?: Contents;
  readonly sharing?: SharePort;
  /** Laid over the store. */
  readonly over?: Partial<StorePort>;
  /** Saves what is pending; left out, nothing is. */
  readonly flush?: () => Promise<void>;
}

/** The model over a store that holds these contents, and what it did to the page. */
export async function openBackup(options: OpenOptions = {}) {
  const { contents = CONTENTS, sharing = downloads().port, over = {} } = options;
  const { flush = async () => {} } = options;
  const store = createMemoryStore(createNoticeBoard());
  await fill(store, contents);
  const gate = createSaveGate({ ...store, ...over });
  const done: string[] = [];
  let undoneAtMs: number | null = null;
  const model = createBackupModel({
    gate,
    flush: () => {
      done.push('flush');
      return flush();
    },
    sharing,
    digest: findDigest(),
    undone: {
      read: () => undoneAtMs,
      write: (atMs) => {
        undoneAtMs = atMs;
      },
    },
    now: () => SAVED_AT_MS,
    reload: () => void done.push('reload'),
    room: createStorageRoom(undefined),
    places: copyPlaces(
      () => null,
      () => null,
    ),
  });
  return { model, store, gate, done };
}

/** A file as an input gives it. */
export function picked(text: string, name = 'invented.json'): File {
  return new File([text], name, { type: 'application/json' });
}
