/** The key of the era's row, in the store of the desk. */
export const ERA_KEY = 'import';

/** The part of the desk's store that is read. */
interface EraShelf {
  get(key: string): Promise<unknown>;
}

/**
 * What tells the present contents from those before the last import or undoing; empty where there
 * has been none. A tab that shows other contents must not write: it would put back what was replaced.
 */
export async function readEra(desk: EraShelf): Promise<string> {
  return eraOf(await desk.get(ERA_KEY));
}

/** The same of what was found under the key. */
export function eraOf(found: unknown): string {
  return typeof found === 'string' ? found : '';
}
