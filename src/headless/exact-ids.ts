import type { Fields } from './json-fields';

/** An id that may hold a number which JSON's own numbers would change: a long one, or one in a list. */
const MAY_CHANGE = /(?<!\\)"id"\s*:\s*(?:[[{]|-?\d[\d.]*[eE]|-?\d[\d.]{15})/;

/** What tells where an id begins and ends, and the numbers in it; what a string escapes goes by whole. */
const TOKEN = /\\.|"id"\s*:|-?\d[\d.eE+-]*|["[\]{},]/g;

/** Ids whose numbers are kept as they are written. */
export interface ExactIds {
  /** The object's text with each number of an id set in quotes, behind a mark. */
  readonly json: string;
  /** Sets the numbers free again in the text of an answer. */
  restore(answer: string): string;
}

/**
 * Takes the numbers of ids through as text: a double cannot hold 12345678901234567890, and who
 * wrote it will look for it in the answer. Null where every id comes back by itself.
 *
 * @param json the text of a JSON object
 * @param fields the object
 */
export function exactIds(json: string, fields: Fields): ExactIds | null {
  if (!MAY_CHANGE.test(json)) return null;
  // The normal form of all text: no escapes hide a mark in it.
  const known = JSON.stringify(fields);
  let mark = '"#';
  while (known.includes(mark)) mark += '#';
  return {
    json: withNumbersMarked(json, mark),
    restore: (answer) => answer.replace(new RegExp(`${mark}([^"]*)"`, 'g'), '$1'),
  };
}

function withNumbersMarked(json: string, mark: string): string {
  let depth = 0;
  let isText = false;
  /** How deep the object lies whose id this is; null outside of ids. */
  let idDepth: number | null = null;
  const step = (token: string) => {
    if (token.endsWith(':')) idDepth ??= depth;
    else if (token === '{' || token === '[') depth++;
    else if (token === '}' || token === ']') depth--;
    const isPast = token === ',' ? depth === idDepth : depth < (idDepth ?? 0);
    if (isPast) idDepth = null;
  };
  return json.replace(TOKEN, (token) => {
    if (token === '"') isText = !isText;
    if (isText) return token;
    step(token);
    return idDepth !== null && /^[-\d]/.test(token) ? `${mark}${token}"` : token;
  });
}
