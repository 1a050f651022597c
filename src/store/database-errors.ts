import type { Failed, ReadFailure } from './store-port';

/** What is on screen is not what is kept any more: another tab brought something else in. */
export class ReplacedError extends Error {
  override readonly name = 'ReplacedError';
}

/** The name of anything thrown, or an empty one. */
export function errorName(error: unknown): string {
  return textOf(error, 'name');
}

/**
 * Whether a connection is gone for good, rather than one request failing. A closed connection
 * says InvalidStateError; iOS, when it stops the database's process, says UnknownError.
 */
export function isConnectionLost(error: unknown): boolean {
  const name = errorName(error);
  if (name === 'InvalidStateError') return true;
  return name === 'UnknownError' && /connection|server/i.test(textOf(error, 'message'));
}

/** Why a write failed. */
export function writeFailure(error: unknown): Failed {
  switch (errorName(error)) {
    case 'QuotaExceededError':
      return { ok: false, reason: 'full' };
    case 'VersionError':
      return { ok: false, reason: 'outdated' };
    case 'ReplacedError':
      return { ok: false, reason: 'replaced' };
    default:
      return { ok: false, reason: 'unavailable' };
  }
}

/** Why nothing could be read. */
export function readFailure(error: unknown): Failed<ReadFailure> {
  return { ok: false, reason: errorName(error) === 'VersionError' ? 'newer-open' : 'not-read' };
}

function textOf(error: unknown, key: 'name' | 'message'): string {
  if (typeof error !== 'object' || error === null) return '';
  const text: unknown = Reflect.get(error, key);
  return typeof text === 'string' ? text : '';
}
