import { type Fields, isFields } from './json-fields';

/** Deeper than any request; what nests without end could be read, but not written back as an id. */
const MOST_DEPTH = 64;

/** The object that a line holds; null where it holds none, or one nested too deeply. */
export function parseLine(line: string): Fields | null {
  const json = parseJson(line);
  return isFields(json) && isShallow(json, MOST_DEPTH) ? json : null;
}

function parseJson(line: string): unknown {
  try {
    return JSON.parse(line);
  } catch {
    return null;
  }
}

function isShallow(value: unknown, depth: number): boolean {
  if (typeof value !== 'object' || value === null) return true;
  return depth > 0 && Object.values(value).every((part) => isShallow(part, depth - 1));
}

/** The answer to a line that holds no object. */
export function malformed(line: number) {
  return {
    id: null,
    ok: false,
    reason: 'malformed',
    line,
    message: `Line ${line} is not a JSON object.`,
    remedy: 'Write one JSON object on each line.',
  };
}
