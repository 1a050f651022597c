import { isPlainObject } from '../mend';

/** How deep a row is written: far deeper than any of ours goes. */
export const DEEPEST = 20;

/** The key that marks what JSON has no word for: `{"~":"NaN"}`. */
const MARK = '~';

/** What is marked, by its word. */
const MARKED: readonly (readonly [string, unknown])[] = [
  ['NaN', Number.NaN],
  ['Infinity', Number.POSITIVE_INFINITY],
  ['-Infinity', Number.NEGATIVE_INFINITY],
  ['undefined', undefined],
];

/** The word for fields that are what they seem, though the mark's own key is among them. */
const PLAIN = 'plain';

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

/** A mark takes a level of its own. */
const DEEPEST_JSON = 2 * DEEPEST + 2;

export type ReadValue = { readonly ok: true; readonly value: unknown } | { readonly ok: false };

/** The value behind a text; refuses what is no JSON, or goes deeper than anything written. */
export function readValue(text: string): ReadValue {
  try {
    const json: unknown = JSON.parse(text);
    return isDeeperThan(DEEPEST_JSON, json) ? { ok: false } : { ok: true, value: unmark(json) };
  } catch {
    return { ok: false };
  }
}

function isDeeperThan(depth: number, json: unknown): boolean {
  if (typeof json !== 'object' || json === null) return false;
  return depth === 0 || Object.values(json).some((entry) => isDeeperThan(depth - 1, entry));
}

function unmark(json: unknown): unknown {
  if (Array.isArray(json)) return json.map(unmark);
  if (!isPlainObject(json)) return json;
  if (!Object.hasOwn(json, MARK)) return unmarkFields(json);
  if (json[MARK] === PLAIN && isPlainObject(json.of)) return unmarkFields(json.of);
  const marked = MARKED.find(([word]) => word === json[MARK]);
  return marked ? marked[1] : unmarkFields(json);
}

/** Made of entries, so that a key called `__proto__` is a key like any other. */
function unmarkFields(json: object): Record<string, unknown> {
  return Object.fromEntries(Object.entries(json).map(([key, field]) => [key, unmark(field)]));
}
