import { crc32 } from '../store/backup/crc-32';
import type { NotedText } from '../store/noted-text';

/** Tells by whom, and of what, a text was noted. */
export type StampOf = (of: readonly string[], text: string) => string;

/** @param build a name that another build of the app has not: its engine may tell something else */
export function stampBy(build: string): StampOf {
  const utf8 = new TextEncoder();
  // Over the text too: what was damaged, or is no text of ours, has another.
  return (of, text) => crc32(utf8.encode([build, ...of, text].join('\n')));
}

/** The text noted under this very stamp, or null. */
export function recallStamped(
  note: NotedText,
  stampOf: StampOf,
  of: readonly string[] = [],
): string | null {
  const [stamp, text] = note.get()?.split('\n') ?? [];
  return text && stamp === stampOf(of, text) ? text : null;
}

export function keepStamped(
  note: NotedText,
  stampOf: StampOf,
  text: string,
  of: readonly string[] = [],
): void {
  note.set(`${stampOf(of, text)}\n${text}`);
}
