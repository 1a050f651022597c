/** What the page asks of a worker. */
export interface Asked {
  readonly id: number;
  /** Of the work, by which the worker knows it. */
  readonly name: string;
  readonly job: unknown;
}

/** What became of a job. */
export type Outcome =
  | { readonly ok: true; readonly result: unknown }
  | { readonly ok: false; readonly message: string };

/** What a worker tells of a job, by its id: what became of it, or that it is still at it. */
export type Told = (Outcome | { readonly isAtIt: true }) & { readonly id: number };

/** A message from a worker; null where it is none of those above. The result comes from our own code. */
export function toldIn(data: unknown): Told | null {
  if (typeof data !== 'object' || data === null) return null;
  const told = data as { readonly [K in 'id' | 'ok' | 'isAtIt']?: unknown };
  const isTold = typeof told.ok === 'boolean' || told.isAtIt === true;
  return typeof told.id === 'number' && isTold ? (told as Told) : null;
}
