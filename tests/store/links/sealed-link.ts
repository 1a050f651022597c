import { crc32 } from '../../../src/store/backup/crc-32';

/** A link's text back to its bytes, without the checksum. */
export function bytesOfLink(link: string): number[] {
  return [...Buffer.from(link, 'base64url')].slice(0, -4);
}

/** Any bytes sealed as a link's are, by whoever knows how. */
export function sealedLink(bytes: readonly number[]): string {
  const data = Uint8Array.from(bytes);
  const seal = Buffer.from(crc32(data), 'hex').reverse();
  return Buffer.concat([data, seal]).toString('base64url');
}
