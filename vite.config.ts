import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { preact } from '@preact/preset-vite';
import { defineConfig, type HtmlTagDescriptor, normalizePath, type Plugin } from 'vite';
import { type ManifestOptions, type ResolvedVitePWAOptions, VitePWA } from 'vite-plugin-pwa';
import { chunkByReach } from './chunks.config.ts';
import release from './package.json' with { type: 'json' };
import { tighten } from './tighten.config.ts';

/** The slate behind everything; index.html paints the first frame in it too. */
const SLATE = '#12161a';

/**
 * No `id`: left out, it is the start URL. A relative one would be resolved against the origin
 * alone, so two copies in two folders of one host would pass for the same app.
 */
const manifest: Partial<ManifestOptions> = {
  name: 'Leeway',
  short_name: 'Leeway',
  description:
    'Where to point the cue when the shot carries sidespin, and how much room for error it leaves.',
  lang: 'en',
  dir: 'ltr',
  start_url: './',
  scope: './',
  display: 'standalone',
  theme_color: SLATE,
  background_color: SLATE,
  categories: ['sports', 'utilities'],
  icons: [
    { src: 'icons/icon-192.png', sizes: '192x192', type: 'image/png', purpose: 'any' },
    { src: 'icons/icon-512.png', sizes: '512x512', type: 'image/png', purpose: 'any' },
    { src: 'icons/maskable-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
  ],
  // What a browser shows of the app before it is installed: `npm run pictures` takes them.
  screenshots: [
    { src: 'pictures/shot.png', label: 'Where to aim, and why' },
    { src: 'pictures/choose.png', label: 'One way to play it, and where the cue ball ends' },
  ].map((picture) => ({
    ...picture,
    sizes: '780x1688',
    type: 'image/png',
    form_factor: 'narrow' as const,
  })),
};

/**
 * Forbids the built page everything it does not need. There is no `connect-src`, so by
 * `default-src` no request, socket or beacon leaves the page, not even to its own origin; the service
 * worker does the fetching. A page that was got at can still navigate, with what it knows in the
 * address, and open a WebRTC connection: no browser of the tests knows `webrtc 'block'`, and Chromium
 * calls it an error on the console.
 */
function contentSecurityPolicy(): Plugin {
  return {
    name: 'content-security-policy',
    apply: 'build',
    transformIndexHtml: {
      order: 'post',
      handler: (html) => {
        const styles = [...html.matchAll(/<style[^>]*>([\s\S]*?)<\/style>/g)];
        const hashes = styles.map(([, css = '']) => `'sha256-${sha256(css)}'`);
        const content = [
          "default-src 'none'",
          "script-src 'self'",
          ["style-src 'self'", ...hashes].join(' '),
          "img-src 'self'",
          "manifest-src 'self'",
          "worker-src 'self'",
          "base-uri 'none'",
          "form-action 'none'",
          // Text becomes a script, or markup, by no way but the one in src/offline/own-scripts.ts.
          "require-trusted-types-for 'script'",
          'trusted-types leeway',
        ].join('; ');
        return [
          {
            tag: 'meta',
            attrs: { 'http-equiv': 'Content-Security-Policy', content },
            injectTo: 'head-prepend',
          },
        ];
      },
    },
  };
}

/**
 * Sends `rescue` beside the app as a script apart, and has the page start it first: a fault in the
 * app's own script, even one that no browser can read, leaves it running.
 */
function rescueScript(): Plugin {
  return {
    name: 'rescue-script',
    apply: 'build',
    buildStart() {
      this.emitFile({ type: 'chunk', id: 'src/rescue.ts', name: 'rescue' });
    },
    transformIndexHtml: {
      order: 'post',
      handler: (_, { bundle = {} }) => {
        const rescue = Object.keys(bundle).find((file) => /\brescue-[\w-]+\.js$/.test(file));
        if (!rescue) throw new Error('The build has no rescue script.');
        const src = `./${rescue}`;
        return [{ tag: 'script', attrs: { type: 'module', async: true, src }, injectTo: 'body' }];
      },
    },
  };
}

/**
 * Has the page run what shows the last screen, as soon as that has come, and fetch all else that it
 * starts with: `last-screen` starts it, by the address of the app's own script.
 */
function lastScreenFirst(): Plugin {
  const started = /<script type="module" crossorigin src="([^"]+\/(\w+)-[^"/]+)"><\/script>/g;
  return {
    name: 'last-screen-first',
    apply: 'build',
    transformIndexHtml: {
      order: 'post',
      handler(html) {
        const later: HtmlTagDescriptor[] = [];
        const page = html.replace(started, (tag, href, name) => {
          if (name === 'shown') return tag.replace('crossorigin', 'async crossorigin');
          const id = name === 'first' ? { id: 'app-script' } : {};
          const attrs = { rel: 'preload', as: 'script', crossorigin: true, fetchpriority: 'low' };
          later.push({ tag: 'link', attrs: { ...attrs, ...id, href }, injectTo: 'head' });
          return '';
        });
        return { html: page, tags: later };
      },
    },
  };
}

/**
 * Builds the engine's worker with the page, which Vite would bundle apart: so the two share the
 * engine's scripts. Its address is what `?worker&url` stands for.
 */
function engineWorker(): Plugin {
  const wanted = /engine-worker\?worker&url$/;
  let emitted = '';
  return {
    name: 'engine-worker',
    apply: 'build',
    enforce: 'pre',
    buildStart() {
      const id = 'src/worker/engine-worker.ts';
      emitted = this.emitFile({ type: 'chunk', id, name: 'engine-worker' });
    },
    resolveId: (id) => (wanted.test(id) ? '\0engine-worker-address' : null),
    load: (id) =>
      id === '\0engine-worker-address'
        ? `export default import.meta.ROLLUP_FILE_URL_${emitted};`
        : null,
  };
}

/**
 * Imports what comes late without more ado: Vite's own way would first preload styles, and there is
 * one style sheet.
 */
function plainLateImports(): Plugin {
  return {
    name: 'plain-late-imports',
    apply: 'build',
    enforce: 'pre',
    load: (id) =>
      id === '\0vite/preload-helper.js' ? 'export const __vitePreload = (load) => load();' : null,
  };
}

/**
 * Makes the worker's list one of addresses and digests: what it stores is checked against the bytes
 * that were built, the last thing that the build does.
 */
function listByDigest({ injectManifest }: ResolvedVitePWAOptions): void {
  // The plugin would add the web app manifest without one; it lies in the folder like the rest.
  injectManifest.additionalManifestEntries = [];
  injectManifest.manifestTransforms = [
    async (entries) => {
      const listed = entries.map(async ({ url, size }) => {
        const bytes = await readFile(join(injectManifest.globDirectory, url));
        return { url, size, revision: null, integrity: `sha256-${sha256(bytes)}` };
      });
      return { manifest: await Promise.all(listed) };
    },
  ];
}

const sha256 = (data: string | Buffer) => createHash('sha256').update(data).digest('base64');

/**
 * Scripts that the first answer runs through: Chromium then compiles their functions beside the
 * page's thread, not one by one on it as each is first called. Other browsers read a comment.
 */
const CALLED_AT_ONCE: ReadonlySet<string> = new Set(['first', 'engine']);

/** A build that takes the stored app off every device that has one: see DEVELOPERS.md. */
const selfDestroying = process.env.LEEWAY_SELF_DESTROYING === '1';

export default defineConfig({
  // Every address is relative to the page, so dist works in any folder of any static host.
  base: './',
  build: {
    // The oldest browsers it has to work in; iOS gives every browser Safari's engine.
    target: ['chrome111', 'firefox115', 'safari16.4', 'ios16.4'],
    assetsInlineLimit: 0,
    // One style sheet, with the first screen: a place that comes later is never seen without its own.
    cssCodeSplit: false,
    modulePreload: false,
    rolldownOptions: {
      output: {
        codeSplitting: {
          includeDependenciesRecursively: false,
          groups: [{ name: chunkByReach(normalizePath(import.meta.dirname)) }],
        },
        postBanner: ({ name }) => (CALLED_AT_ONCE.has(name) ? '//# allFunctionsCalledOnLoad' : ''),
      },
    },
  },
  define: {
    'import.meta.env.LEEWAY_SELF_DESTROYING': JSON.stringify(selfDestroying),
    'import.meta.env.LEEWAY_VERSION': JSON.stringify(release.version),
  },
  plugins: [
    preact(),
    engineWorker(),
    plainLateImports(),
    tighten(),
    contentSecurityPolicy(),
    lastScreenFirst(),
    rescueScript(),
    VitePWA({
      mode: 'production',
      strategies: 'injectManifest',
      srcDir: 'src/service-worker',
      filename: 'sw.ts',
      // An update waits until the player takes it; src/offline/ does the asking.
      registerType: 'prompt',
      selfDestroying,
      injectRegister: false,
      manifest,
      includeManifestIcons: false,
      // The pictures are for whoever has not installed it yet.
      injectManifest: { globPatterns: ['**/*'], globIgnores: ['pictures/*'], rollupFormat: 'iife' },
      integration: { beforeBuildServiceWorker: listByDigest },
    }),
  ],
});
