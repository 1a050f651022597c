import { askAll } from './ask-all';
import { beginWriting } from './begin-transaction';
import type { Database } from './database-schema';
import { EXAMPLE_POSITIONS } from './example-positions';
import { ERA_KEY } from './import-era';
import type { Note } from './note';
import { CONTENT_STORES } from './stores';
import { abort } from './transaction-end';

/**
 * Fills an empty database with rows of whatever stores and the era they are of, in one transaction;
 * nothing of it is kept where that fails, with the reason.
 */
export async function putAllRows(
  database: Database,
  rows: readonly Note[],
  era: string,
): Promise<void> {
  const transaction = beginWriting(database, CONTENT_STORES);
  const put = ({ store: name, id, row }: Pick<Note, 'store' | 'id' | 'row'>) => {
    const store = transaction.objectStore(name);
    return name === 'desk' ? store.put(row, id) : store.put(row);
  };
  // They come with a new database; those that the page has are among its rows.
  const examples = transaction.objectStore('positions');
  const eraRow = { store: 'desk', id: ERA_KEY, row: era } as const;
  try {
    await askAll(EXAMPLE_POSITIONS, ({ id }) => examples.delete(id));
    await askAll(era === '' ? rows : [...rows, eraRow], put);
    await transaction.done;
  } catch (error) {
    abort(transaction);
    throw error;
  }
}
