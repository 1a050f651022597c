import { DEEPEST, writeValue } from './backup/value-text';

/**
 * Whether two values are the same in everything that is kept, as {@link writeValue} would write them.
 * What both share is not looked into, so two states of one row cost what differs.
 */
export function isSame(one: unknown, other: unknown, depth = 0): boolean {
  if (Object.is(one, other)) return true;
  if (depth < DEEPEST && Array.isArray(one) && Array.isArray(other)) {
    if (one.length !== other.length) return false;
    return Array.from(one).every((entry, at) => isSame(entry, other[at], depth + 1));
  }
  if (depth < DEEPEST && isOfFields(one) && isOfFields(other)) {
    const names = Object.keys(one);
    if (names.length !== Object.keys(other).length) return false;
    return names.every(
      (name) => Object.hasOwn(other, name) && isSame(one[name], other[name], depth + 1),
    );
  }
  return isNested(one) && isNested(other) && writeValue(one, depth) === writeValue(other, depth);
}

function isNested(value: unknown): value is object {
  return typeof value === 'object' && value !== null;
}

function isOfFields(value: unknown): value is Readonly<Record<string, unknown>> {
  return isNested(value) && Object.prototype.toString.call(value) === '[object Object]';
}
