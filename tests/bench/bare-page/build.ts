import { mkdtemp } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';

/**
 * Builds the bare page with the app's own packages.
 *
 * @returns the folder, which the caller removes.
 */
export async function buildBarePage(): Promise<string> {
  const outDir = await mkdtemp(join(tmpdir(), 'bare-page-'));
  await build({
    root: 'tests/bench/bare-page',
    configFile: false,
    base: './',
    logLevel: 'warn',
    build: { outDir, emptyOutDir: true, modulePreload: { polyfill: false } },
    plugins: [
      VitePWA({
        mode: 'production',
        injectRegister: false,
        manifest: false,
        workbox: {
          globPatterns: ['**/*'],
          navigateFallback: 'index.html',
          clientsClaim: true,
          inlineWorkboxRuntime: true,
        },
      }),
    ],
  });
  return outDir;
}
