import type { CopyMade } from '../../state/backup/second-copy';
import type { StorageState } from '../../state/backup/storage-look';
import type { SetAside } from '../../store/contents';
import type { FormerCopy } from '../../store/store-port';
import { dayWords } from '../../units/ago-words';
import { STORE_NOUNS } from '../../words/store-words';

/** Whether the browser may clear what is kept, and how much room there is. */
export function roomWords({ isPromised, usedBytes, mostBytes }: StorageState['room']): string {
  const may = isPromised === null ? 'does not say if it may' : isPromised ? 'will not' : 'may';
  const promise = `Short of room, this browser ${may} clear what is kept here.`;
  if (usedBytes === null || mostBytes === null) return promise;
  return `${promise} ${megabytes(usedBytes)} of ${megabytes(mostBytes)} MB are taken.`;
}

function megabytes(bytes: number): string {
  const size = bytes / 1e6;
  return size < 10 ? size.toFixed(1) : `${Math.round(size)}`;
}

/** The second copy: when it was made, and what is not in it. */
export function copyWords({ atMs, leftOut }: CopyMade, nowMs: number): string {
  const rest = leftOut === 0 ? '' : ` It has no room for ${leftOut} older entries.`;
  return `A second copy of kit, readings and players lies elsewhere in it, made ${dayWords(atMs, nowMs)}.${rest}`;
}

/** Where there was no room for the second copy. */
export const NO_COPY_WORDS =
  'This browser has no room for a second copy of your kit, readings and players: save a backup.';

/** What is not told here could not be read. */
const REASONS: { readonly [R in SetAside['reason']]?: string } = {
  repaired: 'mended since',
  noted: 'changed since',
};

/** What is set aside, by place and reason: "Cues, unreadable: 2". */
export function setAsideLines(rows: readonly SetAside[]): readonly string[] {
  const kinds = rows.map(
    (row) => `${STORE_NOUNS[row.store].all}, ${REASONS[row.reason] ?? 'unreadable'}`,
  );
  return [...new Set(kinds)].map(
    (kind) => `${kind}: ${kinds.filter((one) => one === kind).length}`,
  );
}

/** "before an update, 3 Mar". */
export function formerWords({ reason, atMs }: FormerCopy, nowMs: number): string {
  return `before an ${reason === 'upgrade' ? 'update' : 'import'}, ${dayWords(atMs, nowMs)}`;
}
