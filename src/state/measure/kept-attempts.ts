import type { Attempt } from '../../store/attempt';
import { orderAttempts } from '../../store/order-rows';
import type { StorePort } from '../../store/store-port';
import { createKeptRows, type KeptRows } from '../kept-rows';

/** Every attempt, the oldest first. */
export type KeptAttempts = KeptRows<Attempt>;

export function createKeptAttempts(
  store: Pick<StorePort, 'put' | 'delete' | 'onElsewhere'>,
  loaded: readonly Attempt[],
): KeptAttempts {
  const ports = {
    put: (attempt: Attempt) => store.put('attempts', attempt),
    delete: (id: string) => store.delete('attempts', id),
    order: orderAttempts,
  };
  const rows = createKeptRows(ports, loaded);
  store.onElsewhere((news) => {
    if (news.kind === 'row' && news.store === 'attempts') rows.hear(news);
  });
  return rows;
}
