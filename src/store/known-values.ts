import { isWithin, type Range } from '../engine/numerics/range';
import { TIME_RANGE_MS } from './record-ranges';

/** What is asked of a value found in a row, before it stands as it is. */
export const isTime = (was: unknown): was is number => isWithin(TIME_RANGE_MS, was);
export const isCount = (was: unknown): was is number =>
  Number.isSafeInteger(was) && Number(was) > 0;
export const isFlag = (was: unknown): was is boolean => typeof was === 'boolean';

/** Whether something has every one of these numbers, each in its range. */
export function isWithinAll(
  ranges: { readonly [name: string]: Range },
  was: unknown,
): was is Record<string, unknown> {
  if (typeof was !== 'object' || was === null) return false;
  return Object.entries(ranges).every(([name, range]) => isWithin(range, Reflect.get(was, name)));
}
