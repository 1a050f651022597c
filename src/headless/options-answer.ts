import { allWays, unplayable } from './all-ways';
import { answerFields } from './answer-fields';
import { isRefusal } from './door-refusal';
import type { Fields } from './json-fields';
import { OPTIONS_NAMES, parseOptions } from './options-request';
import { potWays } from './pot-ways';

/**
 * Compares all ways to play the position of one line and answers with one line, the easiest first, both
 * JSON: metres, seconds and degrees. Lines are counted from 1. Where one ball and one pocket are all that
 * is said, its direct cuts are compared on the whole grid.
 */
export function answerOptions(line: string, lineNumber: number): string {
  return answerFields(line, lineNumber, OPTIONS_NAMES, answerOf);
}

function answerOf(fields: Fields): object {
  const request = parseOptions(fields);
  if (isRefusal(request)) return request;
  const refusal = unplayable(request);
  if (refusal !== null) return refusal;
  const { only } = request.play;
  return only === null ? allWays(request) : potWays(request, only);
}
