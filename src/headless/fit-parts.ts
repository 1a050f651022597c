import type { Parts } from '../engine/fit/fit-question';
import { PARTS, type Part } from '../engine/kit/kit-numbers';
import { type DoorRefusal, notTaken, refusedAt } from './door-refusal';
import { fieldIn, orElse } from './json-fields';

/** Whatever goes without a name. */
const NAMELESS = 'mine';
const LONGEST_NAME = 80;

/** Which cue, cloth, balls and table, by name; what is left out has the same name everywhere. */
export function parseParts(given: unknown, path: string): Parts | DoorRefusal {
  const names: Partial<Record<Part, string>> = {};
  for (const part of PARTS) {
    const name = orElse(fieldIn(given, part), NAMELESS);
    if (!isName(name)) {
      return refusedAt(path, notTaken(part, `a name of 1 to ${LONGEST_NAME} letters`));
    }
    names[part] = name;
  }
  return names as Parts;
}

function isName(value: unknown): value is string {
  return typeof value === 'string' && value !== '' && value.length <= LONGEST_NAME;
}
