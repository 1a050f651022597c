/**
 * Asks for many requests at once and waits until all are answered: one by one, each would wait for
 * the answer of the one before. Where one fails, so does this, and the others' failures are part of it.
 */
export async function askAll<T>(
  rows: readonly T[],
  ask: (row: T) => Promise<unknown>,
): Promise<void> {
  const asked = rows.map((row) => {
    const answer = ask(row);
    answer.catch(() => {});
    return answer;
  });
  await Promise.all(asked);
}
