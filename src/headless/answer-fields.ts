import { exactIds } from './exact-ids';
import { type Fields, fieldsOf } from './json-fields';
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
  const given = parseLine(line);
  if (given === null) return JSON.stringify(malformed(lineNumber));
  const exact = exactIds(line, given);
  const fields = exact === null ? given : fieldsOf(JSON.parse(exact.json));
  const unknown = unknownNames(fields, known);
  const answer = JSON.stringify({
    id: fields.id ?? null,
    ...answerOf(fields),
    ...(unknown.length > 0 ? { unknown } : {}),
  });
  return exact === null ? answer : exact.restore(answer);
}
