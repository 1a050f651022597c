import type { Quarantined, Repair } from './store-port';

/** What a row amounts to: something valid, with what had to be mended, or why it is beyond repair. */
export type ParsedRow<T> =
  | { readonly ok: true; readonly record: T; readonly repairs: readonly Repair[] }
  | { readonly ok: false; readonly reason: Quarantined['reason'] };
