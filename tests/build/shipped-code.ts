import { gzipSync } from 'node:zlib';
import { bytesOf, shipped } from './dist';

/** Scripts and styles that ship, the service worker among them. */
export const shippedCode: readonly string[] = shipped.filter((file) => /\.(js|css)$/.test(file));

/** What they take on the wire, bytes. */
export function gzippedCodeBytes(): number {
  const sizes = shippedCode.map((file) => gzipSync(bytesOf(file), { level: 9 }).length);
  return sizes.reduce((sum, size) => sum + size, 0);
}
