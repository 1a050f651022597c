import type { RoomGiven } from '../../sensors/storage-room';
import type { FormerCopy, SetAside } from '../../store/store-port';
import { dayWords } from '../../units/ago-words';
import { KIND_LABELS } from './backup-words';

/** Whether the browser may clear what is kept, and how much room it gives. */
export function roomWords({ isPromised, usedBytes, mostBytes }: RoomGiven): string {
  const promise =
    isPromised === null
      ? 'This browser does not say whether it may clear what is kept here.'
      : isPromised
        ? 'This browser has promised not to clear what is kept here by itself.'
        : 'This browser may clear what is kept here when it runs short of room.';
  if (usedBytes === null || !mostBytes) return promise;
  return `${promise} It takes ${sizeWords(usedBytes)} of the ${sizeWords(mostBytes)} there is room for.`;
}

function sizeWords(bytes: number): string {
  const [size, unit] = bytes < 1e9 ? [bytes / 1e6, 'MB'] : [bytes / 1e9, 'GB'];
  return `${size < 10 ? size.toFixed(1) : Math.round(size)} ${unit}`;
}

/** The second copy: when it was made, and what is not in it. */
export function copyWords(
  made: { readonly atMs: number; readonly leftOut: number } | null,
  nowMs: number,
): string {
  if (made === null) return '';
  const rest =
    made.leftOut === 0 ? '' : ` It has no room for ${made.leftOut} of the oldest entries.`;
  return `A second copy of your kit and readings, made ${dayWords(made.atMs, nowMs)}, lies in another part of this browser.${rest}`;
}

const REASONS: Readonly<Record<SetAside['reason'], string>> = {
  'not-a-record': 'no entry at all',
  'no-id': 'without a name of its own',
  'nothing-readable': 'nothing readable in it',
  unreadable: 'could not be read',
  repaired: 'as it was before it was mended',
  noted: 'noted while the storage was shut, and changed since',
};

/** What is set aside, by place and reason: "Cues: 2 nothing readable in it". */
export function setAsideLines(rows: readonly SetAside[]): readonly string[] {
  const counts = new Map<string, number>();
  for (const { store, reason } of rows) {
    const words = `${KIND_LABELS[store]} (${REASONS[reason]})`;
    counts.set(words, (counts.get(words) ?? 0) + 1);
  }
  return [...counts].map(([words, count]) => `${words}: ${count}`);
}

/** "Before an update, 3 Mar". */
export function formerWords({ reason, atMs }: FormerCopy, nowMs: number): string {
  const what = reason === 'upgrade' ? 'an update' : 'the last import';
  return `Before ${what}, ${dayWords(atMs, nowMs)}`;
}
