/** A transaction tells of its failure beside the request that failed; once is enough. */
export function ignoreSecondTelling(done: Promise<void>): void {
  done.catch(() => {});
}

/** Takes back what a transaction did; what failed in it may have done so already. */
export function abort(transaction: { abort(): void }): void {
  try {
    transaction.abort();
  } catch {
    // There is nothing left to take back.
  }
}
