import { posix } from 'node:path';
import { gzipSync } from 'node:zlib';
import { parseSync } from 'vite';
import { bytesOf, shipped, textOf } from './dist';

/** Scripts and styles that ship, the service worker among them. */
export const shippedCode: readonly string[] = shipped.filter((file) => /\.(js|css)$/.test(file));

/** What files take on the wire, bytes: all scripts and styles where none are given. */
export function gzippedCodeBytes(files: readonly string[] = shippedCode): number {
  const sizes = files.map((file) => gzipSync(bytesOf(file), { level: 9 }).length);
  return sizes.reduce((sum, size) => sum + size, 0);
}

/** What a script imports before it runs, as paths within dist. */
function importsOf(script: string): readonly string[] {
  const { staticImports } = parseSync(script, textOf(script)).module;
  return staticImports.map(({ moduleRequest }) =>
    posix.join(posix.dirname(script), moduleRequest.value),
  );
}

/** Scripts, and all that they import before they run. */
export function scriptsWith(...scripts: readonly string[]): readonly string[] {
  const found = new Set(scripts);
  for (const script of found) {
    for (const next of importsOf(script)) found.add(next);
  }
  return [...found];
}

/** The scripts that the page starts, or has fetched to be started, with all they import before they run. */
export function firstScripts(): readonly string[] {
  const page = textOf('index.html');
  const started = [
    ...page.matchAll(/<script[^>]* src="([^"]+)"/g),
    ...page.matchAll(/<link rel="preload" as="script"[^>]* href="([^"]+)"/g),
  ];
  return scriptsWith(...started.map(([, src = '']) => posix.normalize(src)));
}
