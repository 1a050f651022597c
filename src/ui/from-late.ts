import type { Late } from '../state/late';

/** Takes something from a part that may come later: at once where it is here, else once it has come. */
export function fromLate<T extends object, R>(
  part: Late<T>,
  take: (found: T) => R,
): R | Promise<R | null> {
  const here = part.here.peek();
  return here ? take(here) : part.fetch().then((found) => found && take(found));
}
