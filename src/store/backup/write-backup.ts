import type { ContentStore, Contents } from '../contents';
import { latestVersion, MIGRATIONS } from '../migrations';
import type { PlayedShot, Player } from '../player';
import type { ReadResult, StorePort } from '../store-port';
import { CONTENT_STORES, ofStores, STORES, storesOf } from '../stores';
import {
  BACKUP_FORMAT,
  type BackupHeader,
  checksumsOf,
  type Digest,
  sealLine,
  writeChecksums,
} from './backup-format';
import { writeValue } from './value-text';

/** The text of a backup: a header, a line for every row, and checksums. */
export async function writeBackup(
  contents: Contents,
  savedAtMs: number,
  digest: Digest | null,
): Promise<string> {
  return await writeRows(rowsOf(contents), savedAtMs, digest);
}

/** The same of one player alone, with all that they have played: it can be added to what is elsewhere. */
export async function writePlayer(
  player: Player,
  played: readonly PlayedShot[],
  savedAtMs: number,
  digest: Digest | null,
): Promise<string> {
  const shots = played.map((shot) => ['played', shot] as const);
  return await writeRows([['players', player], ...shots], savedAtMs, digest, { isPart: true });
}

async function writeRows(
  rows: readonly (readonly [ContentStore, unknown])[],
  savedAtMs: number,
  digest: Digest | null,
  part: Pick<BackupHeader, 'isPart'> = {},
): Promise<string> {
  const header: BackupHeader = {
    leewayBackup: BACKUP_FORMAT,
    app: 'Leeway',
    savedAtMs,
    schema: latestVersion(MIGRATIONS),
    lines: rows.length,
    ...part,
  };
  const open = [
    JSON.stringify(header).slice(0, -1),
    ...rows.map(([store, row]) => `{"store":"${store}","row":${writeValue(row)}`),
  ];
  const sealed = open.map((line, index) => `${sealLine(line, index + 1)}\n`).join('');
  return `${sealed}${writeChecksums(await checksumsOf(sealed, digest))}\n`;
}

/** Every row, in an order that is the same on every device. */
function rowsOf(contents: Contents): readonly (readonly [ContentStore, unknown])[] {
  const rows = storesOf(contents);
  const inOrder = ofStores<'rows'>((name) => STORES[name].inBackup(rows[name]));
  return CONTENT_STORES.flatMap((name) => inOrder[name].map((row) => [name, row] as const));
}

export type ExportResult =
  | { readonly ok: true; readonly text: string }
  | Extract<ReadResult, { ok: false }>;

/**
 * Everything the app keeps, what was set aside included, as the text of one file.
 * @param digest null where the browser gives none; the file then carries a CRC-32 alone.
 */
export async function exportBackup(
  store: Pick<StorePort, 'readAll'>,
  savedAtMs: number,
  digest: Digest | null,
): Promise<ExportResult> {
  const read = await store.readAll();
  if (!read.ok) return read;
  return { ok: true, text: await writeBackup(read.contents, savedAtMs, digest) };
}
