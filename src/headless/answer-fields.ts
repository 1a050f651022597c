import type { Fields } from './json-fields';
import { malformed, parseLine } from './parse-line';
import { type KnownNames, unknownNames } from './unknown-names';

/**
 * One line of answer to one of a request, both JSON: the request's id, the answer, and the names in
 * the request that mean nothing, if there are some. Lines are counted from 1.
 */
export function answerFields(
  line: string,
  lineNumber: number,
  known: KnownNames,
  answerOf: (fields: Fields) => object,
): string {
  const fields = parseLine(line);
  if (fields === null) return JSON.stringify(malformed(lineNumber));
  const unknown = unknownNames(fields, known);
  return JSON.stringify({
    id: fields.id ?? null,
    ...answerOf(fields),
    ...(unknown.length > 0 ? { unknown } : {}),
  });
}
