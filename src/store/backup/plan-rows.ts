import type { Attempt } from '../attempt';
import type { Desk } from '../records';
import type { SetAside } from '../store-port';
import { writeValue } from './write-value';

/** A row as a plan sees it. */
export interface Row<T> {
  /** What tells it from the others of its store. */
  readonly id: string;
  /** What a person calls it. */
  readonly name: string;
  readonly value: T;
}

/** What has a name of its own: records and positions. */
export function recordRows<T extends { readonly id: string; readonly name: string }>(
  records: readonly T[],
): Row<T>[] {
  return records.map((value) => ({ id: value.id, name: value.name, value }));
}

/** An attempt has no name of its own; that of its trial tells what it was. */
export function attemptRows(attempts: readonly Attempt[]): Row<Attempt>[] {
  return attempts.map((value) => ({ id: value.id, name: value.shot.trial, value }));
}

export function deskRows(desk: Desk): Row<Desk>[] {
  return [{ id: 'desk', name: 'desk', value: desk }];
}

/** What was set aside is known by all that it says. */
export function setAsideRows(rows: readonly SetAside[]): Row<SetAside>[] {
  return rows.map((value) => ({ id: writeValue(value), name: value.store, value }));
}
