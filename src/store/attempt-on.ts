import type { DatabaseDoor } from './database-door';
import { writeFailure } from './database-errors';
import type { Database } from './database-schema';
import type { WriteResult } from './store-port';

/** Why something could not be done. */
export type Failed = Extract<WriteResult, { ok: false }>;

/** Works on the database, or says in words why that was not possible. */
export async function attemptOn<R>(
  door: DatabaseDoor,
  work: (database: Database) => Promise<R>,
): Promise<R | Failed> {
  try {
    return await door.withDatabase(work);
  } catch (error) {
    return writeFailure(error);
  }
}
