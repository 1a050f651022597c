import type { StorePort } from '../store-port';
import type { Digest } from './backup-format';
import { writeBackup } from './write-backup';

export type ExportResult =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly message: string };

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
