import { type Fields, isFields } from './json-fields';
import { MOST_LINE_BYTES } from './split-lines';

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
  return refusedLine(line, 'is not a JSON object', 'Write one JSON object on each line.');
}

/** The answer to a line that is longer than is read. */
export function overlong(line: number) {
  const most = `${MOST_LINE_BYTES / 1e6} MB`;
  return refusedLine(line, `is longer than ${most}`, `Keep each line within ${most}.`);
}

function refusedLine(line: number, what: string, remedy: string) {
  const message = `Line ${line} ${what}.`;
  return { id: null, ok: false, reason: 'malformed', line, message, remedy };
}
