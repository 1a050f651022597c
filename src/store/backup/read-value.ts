import { isPlainObject } from '../mend';
import { DEEPEST, MARK, MARKED, PLAIN } from './write-value';

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
