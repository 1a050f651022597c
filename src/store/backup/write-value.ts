/** How deep a row is written: far deeper than any of ours goes. */
export const DEEPEST = 20;

/** The key that marks what JSON has no word for: `{"~":"NaN"}`. */
export const MARK = '~';

/** What is marked, by its word. */
export const MARKED: readonly (readonly [string, unknown])[] = [
  ['NaN', Number.NaN],
  ['Infinity', Number.POSITIVE_INFINITY],
  ['-Infinity', Number.NEGATIVE_INFINITY],
  ['undefined', undefined],
];

/** The word for fields that are what they seem, though the mark's own key is among them. */
export const PLAIN = 'plain';

/**
 * A value as JSON, and always the same text for the same value: keys in order, −0 and what JSON has
 * no word for kept. What no version of the app stores (a Map, say, or a ring) becomes a text that
 * tells what it was.
 */
export function writeValue(value: unknown, depth = 0): string {
  const marked = MARKED.find(([, meant]) => Object.is(meant, value));
  if (marked) return `{"${MARK}":"${marked[0]}"}`;
  if (Object.is(value, -0)) return '-0';
  if (typeof value !== 'object' || value === null) return writeBare(value);
  if (depth < DEEPEST && Array.isArray(value)) {
    return `[${Array.from(value, (entry) => writeValue(entry, depth + 1)).join(',')}]`;
  }
  const kind = Object.prototype.toString.call(value);
  const isWritten = depth < DEEPEST && kind === '[object Object]';
  return isWritten ? writeFields(value, depth + 1) : JSON.stringify(kind);
}

function writeBare(value: unknown): string {
  const isJson = value === null || ['string', 'number', 'boolean'].includes(typeof value);
  return JSON.stringify(isJson ? value : String(value));
}

function writeFields(value: object, depth: number): string {
  const fields = Object.entries(value)
    .sort(([one], [other]) => (one < other ? -1 : 1))
    .map(([key, field]) => `${JSON.stringify(key)}:${writeValue(field, depth)}`);
  const text = `{${fields.join(',')}}`;
  return Object.hasOwn(value, MARK) ? `{"${MARK}":"${PLAIN}","of":${text}}` : text;
}
