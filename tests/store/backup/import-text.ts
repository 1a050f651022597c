import { findDigest } from '../../../src/store/backup/backup-format';
import { parseBackup } from '../../../src/store/backup/parse-backup';
import { planImport } from '../../../src/store/backup/plan-import';
import { exportBackup } from '../../../src/store/backup/write-backup';
import type { Contents } from '../../../src/store/contents';
import type { ImportPlan, StorePort } from '../../../src/store/store-port';
import { CONTENT_STORES } from '../../../src/store/stores';

/** Every backup of these tests is saved at one time, so that only contents tell them apart. */
const SAVED_AT_MS = 1_800_000_000_000;

export async function textOf(store: StorePort): Promise<string> {
  const exported = await exportBackup(store, SAVED_AT_MS, findDigest());
  if (!exported.ok) throw new Error(exported.reason);
  return exported.text;
}

export async function contentsOf(store: StorePort): Promise<Contents> {
  const read = await store.readAll();
  if (!read.ok) throw new Error(read.reason);
  return read.contents;
}

/** What a person does with a file: has it read, sees the plan, agrees. */
export async function importText(store: StorePort, text: string, mode: ImportPlan['mode']) {
  const parsed = await parseBackup(text, findDigest());
  if (!parsed.ok) throw new Error(`line ${parsed.line}: ${parsed.fault.reason}`);
  return await store.importBackup(planImport(await contentsOf(store), parsed.backup, mode));
}

/** Makes a store hold just this. */
export async function fill(store: StorePort, contents: Contents): Promise<void> {
  const whole = { savedAtMs: 0, schema: 5, contents, told: CONTENT_STORES, isPart: false } as const;
  const backup = { ...whole, repairs: [], checkedBy: 'crc32' } as const;
  const written = await store.importBackup(planImport(await contentsOf(store), backup, 'replace'));
  if (!written.ok) throw new Error(written.reason);
}
