import type { TextFile } from '../../sensors/share-file';
import type { ContentStore } from '../../store/contents';
import { CONTENT_STORES } from '../../store/stores';

/** How many rows of each store a backup holds. */
export type RowCounts = { readonly [S in ContentStore]: number };

/**
 * A backup as a file to hand out. Its day is that of the person's own calendar.
 * @param player whose alone it is; null: it is of everything
 */
export function backupFile(
  text: string,
  savedAtMs: number,
  player: string | null = null,
): TextFile {
  const at = new Date(savedAtMs);
  const day = [at.getFullYear(), at.getMonth() + 1, at.getDate()]
    .map((part) => `${part}`.padStart(2, '0'))
    .join('-');
  const what = player === null ? 'backup' : `player-${fileWord(player)}`;
  return { name: `leeway-${what}-${day}.json`, mediaType: 'application/json', text };
}

/** Counted in the file itself, so that what is told of it is what it holds. */
export function countRows(text: string): RowCounts {
  const counts = Object.fromEntries(CONTENT_STORES.map((name) => [name, 0]));
  for (const [, name = ''] of text.matchAll(/^\{"store":"([a-z-]+)"/gm)) {
    counts[name] = (counts[name] ?? 0) + 1;
  }
  return counts as RowCounts;
}

/** A name as every file system takes it. */
function fileWord(name: string): string {
  const kept = name.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];
  return kept.join('-').slice(0, 40) || 'one';
}
