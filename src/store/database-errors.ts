import type { WriteResult } from './store-port';

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

/** Why a write failed, in words a person can act on. */
export function writeFailure(error: unknown): Extract<WriteResult, { ok: false }> {
  switch (errorName(error)) {
    case 'QuotaExceededError':
      return { ok: false, reason: 'full', message: 'No room left: this change is not kept yet.' };
    case 'VersionError':
      return {
        ok: false,
        reason: 'outdated',
        message: 'A newer version is open: reload to go on saving.',
      };
    case 'ReplacedError':
      return {
        ok: false,
        reason: 'replaced',
        message: 'A backup was brought in elsewhere: reload to go on saving.',
      };
    default:
      return { ok: false, reason: 'unavailable', message: 'This change is not saved yet.' };
  }
}

/** Why nothing could be read, in words a person can act on. */
export function readFailure(error: unknown): string {
  return errorName(error) === 'VersionError'
    ? 'A newer version is open: reload first.'
    : 'What is kept could not be read.';
}

function textOf(error: unknown, key: 'name' | 'message'): string {
  if (typeof error !== 'object' || error === null) return '';
  const text: unknown = Reflect.get(error, key);
  return typeof text === 'string' ? text : '';
}
