import { type FindStorage, type NotedText, notedText } from '../../store/noted-text';
import type { Loaded, StorePort } from '../../store/store-port';

/** Where the second copy lies. */
export interface CopyPlaces {
  readonly copy: NotedText;
  /** A copy whose original is gone: it stays until it was brought back or given up. */
  readonly lost: NotedText;
  /** Whether this visit, which cannot open the database, is to run from the copy. */
  readonly wanted: NotedText;
}

/** @param findVisit storage that lasts as long as the visit */
export function copyPlaces(findStorage: FindStorage, findVisit: FindStorage): CopyPlaces {
  return {
    copy: notedText(findStorage, 'leeway.copy'),
    lost: notedText(findStorage, 'leeway.lost-copy'),
    wanted: notedText(findVisit, 'leeway.run-from-copy'),
  };
}

/** Takes what was loaded, and loads anew from the copy what can be had of it. */
type RunFromCopy = (store: StorePort, loaded: Loaded, places: CopyPlaces) => Promise<Loaded>;

/**
 * Loads what is kept; from the copy, where that was asked for and nothing else can be had.
 * @param findCopy how to read it, which hardly any start needs
 */
export async function loadKept(
  store: StorePort,
  places: CopyPlaces,
  findCopy: () => Promise<{ readonly runFromCopy: RunFromCopy }>,
): Promise<Loaded> {
  const loaded = await store.loadAll();
  if (store.keeps || places.wanted.get() === null) return loaded;
  const { runFromCopy } = await findCopy();
  return await runFromCopy(store, loaded, places);
}
