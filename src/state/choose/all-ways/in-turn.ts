/**
 * Does something with each item, so many at once, and tells what came of it in the order of the items,
 * whoever was done first. Rejected as soon as any is.
 */
export async function inTurn<T, R>(
  items: readonly T[],
  atOnce: number,
  does: (item: T, at: number) => Promise<R>,
  tell: (result: R) => void = () => {},
): Promise<readonly R[]> {
  const results = new Map<number, R>();
  const told: R[] = [];
  const queue = items.entries();
  const tellOn = () => {
    for (let at = told.length; results.has(at); at++) {
      const result = results.get(at) as R;
      told.push(result);
      tell(result);
    }
  };
  const hand = async () => {
    for (const [at, item] of queue) {
      results.set(at, await does(item, at));
      tellOn();
    }
  };
  await Promise.all(Array.from({ length: atOnce }, hand));
  return told;
}
