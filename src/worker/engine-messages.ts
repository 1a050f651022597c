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

/** What a worker tells of a job, by its id. */
export type Told = Outcome & { readonly id: number };

/** A message from a worker; null where it is none of those above. The result comes from our own code. */
export function toldIn(data: unknown): Told | null {
  if (typeof data !== 'object' || data === null) return null;
  const told = data as Partial<Told>;
  const isTold = typeof told.id === 'number' && typeof told.ok === 'boolean';
  return isTold ? (told as Told) : null;
}
