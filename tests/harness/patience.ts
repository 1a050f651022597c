/**
 * How long a condition is waited for, ms. Only what would never come true takes as long: a test that
 * passes waits no longer than it has to, on however slow or busy a machine.
 */
export const PATIENCE_MS = 120_000;
