import { createHash } from 'node:crypto';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { createStoredApp, type StoredApp } from '../../../src/service-worker/stored-app';

const SCOPE = 'https://example.test/app/';
const TYPES: Readonly<Record<string, string>> = {
  'index.html': 'text/html; charset=utf-8',
  'assets/index.js': 'text/javascript',
  'assets/index.css': 'text/css',
  'icons/icon.png': 'image/png',
  'favicon.svg': 'image/svg+xml',
  'manifest.webmanifest': 'application/manifest+json',
};
const NAMES = Object.keys(TYPES);
const LOGIN = '<!doctype html><title>Log in</title>';

/** What the host has of a version. */
const bodyOf = (name: string, version = 1) => `${name}, version ${version}`;
const listOf = (version: number) =>
  NAMES.map((url) => {
    const digest = createHash('sha256').update(bodyOf(url, version)).digest('base64');
    return { url, integrity: `sha256-${digest}` };
  });

/** What the network sends instead of a file, by its address and how it is asked for. */
type Network = (name: string, cache: RequestCache | undefined) => Response | undefined;

let stored: Map<string, Map<string, Response>>;
let served: number;
let network: Network;
const ask = vi.fn(async (asked: string | URL | Request, init?: RequestInit) => {
  const name = (typeof asked === 'string' ? asked : (asked as Request).url).slice(SCOPE.length);
  const sent = network(name, init?.cache);
  if (sent) return sent;
  if (!TYPES[name]) return new Response('Not found', { status: 404 });
  return new Response(bodyOf(name, served), { headers: { 'Content-Type': TYPES[name] } });
});

function fakeCache(name: string) {
  const files = stored.get(name) ?? new Map<string, Response>();
  stored.set(name, files);
  return {
    keys: async () => [...files.keys()].map((url) => ({ url })),
    put: async (key: string, response: Response) => void files.set(key, response),
    delete: async ({ url }: { url: string }) => files.delete(url),
  };
}
const caches = {
  open: async (name: string) => fakeCache(name),
  match: async (key: string, { cacheName }: { readonly cacheName: string }) =>
    stored.get(cacheName)?.get(key)?.clone(),
  keys: async () => [...stored.keys()],
  delete: async (name: string) => stored.delete(name),
} as unknown as CacheStorage;

const appOf = (version: number) =>
  createStoredApp({ files: listOf(version), scope: SCOPE, caches, fetch: ask });

/** Every text that is stored anywhere. */
const texts = async () => {
  const all = [...stored.values()].flatMap((files) => [...files.values()]);
  return (await Promise.all(all.map((response) => response.clone().text()))).sort();
};
const wholeOf = (version: number) => NAMES.map((name) => bodyOf(name, version)).sort();

const visit = (app: StoredApp, path: string, init: { mode?: string; method?: string } = {}) =>
  app.answer({ method: 'GET', mode: 'no-cors', url: SCOPE + path, ...init } as Request);

beforeEach(() => {
  stored = new Map();
  served = 1;
  network = () => undefined;
  ask.mockClear();
});

const login = () => new Response(LOGIN, { headers: { 'Content-Type': 'text/html' } });

describe('the app is stored', () => {
  it('whole, and then nothing is asked for again', async () => {
    const app = appOf(1);
    expect(await app.fill()).toEqual({ kind: 'whole' });
    expect(await texts()).toEqual(wholeOf(1));
    expect(await app.fill()).toEqual({ kind: 'whole' });
    expect(ask).toHaveBeenCalledTimes(NAMES.length);
  });

  it.each(NAMES)('without a login page that comes for %s, which is named', async (file) => {
    network = (name) => (name === file ? login() : undefined);
    const app = appOf(1);
    expect(await app.fill()).toEqual({ kind: 'altered', file });
    expect(await texts()).toEqual(wholeOf(1).filter((text) => text !== bodyOf(file)));
    network = () => undefined;
    expect(await app.fill()).toEqual({ kind: 'whole' });
    expect(await texts()).toEqual(wholeOf(1));
  });

  it.each([
    ['one byte too many', () => new Response(`${bodyOf('assets/index.js')} `, typed())],
    ['the right bytes of a wrong type', () => new Response(bodyOf('assets/index.js'))],
  ])('without %s', async (_, sent) => {
    network = (name) => (name === 'assets/index.js' ? sent() : undefined);
    expect(await appOf(1).fill()).toEqual({ kind: 'altered', file: 'assets/index.js' });
    expect(await texts()).not.toContain(bodyOf('assets/index.js'));
  });

  it.each([404, 500, 203])(
    'without a file of status %d, its bytes right or not',
    async (status) => {
      const sent = () => new Response(bodyOf('assets/index.js'), { ...typed(), status });
      network = (name) => (name === 'assets/index.js' ? sent() : undefined);
      expect(await appOf(1).fill()).toEqual({ kind: 'incomplete' });
      expect(await texts()).not.toContain(bodyOf('assets/index.js'));
    },
  );

  it('as far as it goes where the network breaks off, and told of what is altered first', async () => {
    network = (name) => {
      if (name === 'index.html') throw new TypeError('offline');
      return undefined;
    };
    expect(await appOf(1).fill()).toEqual({ kind: 'incomplete' });
    expect(await texts()).toHaveLength(NAMES.length - 1);
    stored.clear();
    network = (name) => {
      if (name === 'index.html') throw new TypeError('offline');
      return name === 'favicon.svg' ? login() : undefined;
    };
    expect(await appOf(1).fill()).toEqual({ kind: 'altered', file: 'favicon.svg' });
  });

  it('past what the browser keeps, where that is a wrong answer marked as good for a year', async () => {
    network = (_, cache) => (cache === 'reload' ? undefined : login());
    expect(await appOf(1).fill()).toEqual({ kind: 'whole' });
    expect(await texts()).toEqual(wholeOf(1));
  });

  it('incomplete where the device has no room, without an error', async () => {
    const full = { ...caches, open: async () => Promise.reject(new Error('full')) };
    const files = listOf(1);
    const app = createStoredApp({ files, scope: SCOPE, caches: full as CacheStorage, fetch: ask });
    expect(await app.fill()).toEqual({ kind: 'incomplete' });
    // Online it is there all the same.
    expect(await (await visit(app, 'index.html', { mode: 'navigate' }))?.text()).toBe(
      bodyOf('index.html'),
    );
  });
});

describe('a newer version', () => {
  it('lies beside the one at work until that is done with', async () => {
    const [older, newer] = [appOf(1), appOf(2)];
    await older.fill();
    stored.set(`workbox-precache-v2-${SCOPE}`, new Map([['old', new Response('older still')]]));
    stored.set('https://example.test/', new Map([['theirs', new Response('of another app')]]));
    served = 2;
    expect(await newer.fill()).toEqual({ kind: 'whole' });
    expect(await (await visit(older, 'assets/index.js'))?.text()).toBe(bodyOf('assets/index.js'));
    await newer.tidy();
    expect(await texts()).toEqual([...wholeOf(2), 'of another app'].sort());
  });

  it('half of which is out leaves the older one whole', async () => {
    await appOf(1).fill();
    served = 2;
    // A host that answers unknown paths with its start page.
    network = (name) => (name === 'assets/index.js' ? login() : undefined);
    expect(await appOf(2).fill()).toEqual({ kind: 'altered', file: 'assets/index.js' });
    for (const text of wholeOf(1)) expect(await texts()).toContain(text);
    expect(await texts()).not.toContain(LOGIN);
  });
});

describe('a page is answered', () => {
  it.each(['', 'index.html', '?from=home-screen', 'nowhere'])('at "%s"', async (path) => {
    const app = appOf(1);
    await app.fill();
    ask.mockClear();
    const answer = await visit(app, path, { mode: 'navigate' });
    expect(await answer?.text()).toBe(bodyOf('index.html'));
    expect(ask).not.toHaveBeenCalled();
  });

  it('by the network where it asks for anything that is not of the app, or sends something', () => {
    const app = appOf(1);
    expect(visit(app, 'nowhere')).toBeUndefined();
    expect(visit(app, 'index.html', { method: 'POST' })).toBeUndefined();
    const elsewhere = { method: 'GET', mode: 'cors', url: 'https://elsewhere.test/app/index.html' };
    expect(app.answer(elsewhere as Request)).toBeUndefined();
  });

  it.each(NAMES)('with %s from the network where it was cleared, and keeps it', async (file) => {
    const app = appOf(1);
    expect(await (await visit(app, file))?.text()).toBe(bodyOf(file));
    expect(await texts()).toEqual([bodyOf(file)]);
    network = () => {
      throw new TypeError('offline');
    };
    expect(await (await visit(app, file))?.text()).toBe(bodyOf(file));
  });

  it.each(NAMES)(
    'with what comes for %s where that is a login page, and keeps none',
    async (file) => {
      network = login;
      const app = appOf(1);
      expect(await (await visit(app, file))?.text()).toBe(LOGIN);
      expect(await texts()).toEqual([]);
    },
  );
});

function typed() {
  return { headers: { 'Content-Type': 'text/javascript' } };
}
