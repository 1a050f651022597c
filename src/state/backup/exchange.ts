import type { StoreFailure } from '../../store/store-port';
import type { SaveGate } from './save-gate';

/** Why an exchange was not done: what it was agreed for is not there any more, or the store's reason. */
export type ExchangeFailure = StoreFailure | 'changed-meanwhile';

/** Done, or why not. */
export type Exchanged =
  | { readonly ok: true }
  | { readonly ok: false; readonly reason: ExchangeFailure };

export interface ExchangePorts {
  readonly gate: SaveGate;
  /** Has saved whatever is not saved yet; resolves when the store has answered. */
  readonly flush: () => Promise<unknown>;
  /** Loads the page anew, so that everything on it is what is kept. */
  readonly reload: () => void;
}

/**
 * Takes something else in the place of what is kept, and loads the page anew. What is not saved yet
 * is saved before; from then on nothing is, unless the exchange fails.
 */
export async function exchange(
  { gate, flush, reload }: ExchangePorts,
  work: () => Promise<Exchanged>,
): Promise<Exchanged> {
  await flush();
  gate.close();
  const done = await work();
  if (done.ok) reload();
  else gate.open();
  return done;
}
