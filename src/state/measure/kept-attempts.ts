import type { Attempt } from '../../store/attempt';
import { orderAttempts } from '../../store/order-attempts';
import type { StorePort } from '../../store/store-port';
import { createKeptRows, type KeptRows } from '../kept-rows';

/** Every attempt, the oldest first. */
export type KeptAttempts = KeptRows<Attempt>;

export function createKeptAttempts(
  store: Pick<StorePort, 'putAttempt' | 'deleteAttempt' | 'onElsewhere'>,
  loaded: readonly Attempt[],
): KeptAttempts {
  const ports = {
    put: (attempt: Attempt) => store.putAttempt(attempt),
    delete: (id: string) => store.deleteAttempt(id),
    order: orderAttempts,
  };
  const rows = createKeptRows(ports, loaded);
  store.onElsewhere((news) => {
    if (news.kind === 'row' && news.store === 'attempts') rows.hear(news);
  });
  return rows;
}
