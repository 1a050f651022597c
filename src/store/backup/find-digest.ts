import type { Digest } from './backup-format';

/** The browser's SHA-256; null where there is none, which is so outside https. */
export function findDigest(
  source: { readonly subtle?: Pick<SubtleCrypto, 'digest'> | undefined } = globalThis.crypto,
): Digest | null {
  const { subtle } = source;
  return subtle ? (bytes) => subtle.digest('SHA-256', bytes) : null;
}
