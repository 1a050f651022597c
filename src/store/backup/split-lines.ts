/** Years of trials take some megabytes. */
const LONGEST_TEXT = 32_000_000;

/**
 * A file's lines, without what a mail program may have done to their ends, or an editor to the ends
 * of the file. Null where it is too long to look at.
 */
export function splitLines(text: string): string[] | null {
  if (text.length > LONGEST_TEXT) return null;
  const lines = text
    .replace(/^\uFEFF/, '')
    .replaceAll('\r\n', '\n')
    .split('\n');
  while (lines.length > 1 && lines.at(-1) === '') lines.pop();
  return lines;
}
