import type { Range } from '../numerics/range';
import type { Refusal, RefusalField, RefusalReason } from './shot';

export function refusal(
  reason: Exclude<RefusalReason, 'out-of-range'>,
  field?: RefusalField,
): Refusal {
  return field === undefined ? { ok: false, reason } : { ok: false, reason, field };
}

/** An input that the engine does not take, with what it does. */
export function outOfRange(field: RefusalField, range: Range, quantity?: string): Refusal {
  const refused = { ok: false, reason: 'out-of-range', field, range } as const;
  return quantity === undefined ? refused : { ...refused, quantity };
}
