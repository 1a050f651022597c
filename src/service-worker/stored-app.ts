/** A file of the app, as the list that the build writes into the worker has it. */
export interface ShippedFile {
  /** Relative to the worker. */
  readonly url: string;
  /** The digest of its bytes: `sha256-`, then base64. */
  readonly integrity: string;
}

/**
 * What has become of storing the app. `altered` names a file that came with status 200, but not
 * with the bytes or the type that it was built with; it is told before anything else that is wrong.
 * `incomplete`: a file could not be had, or not be stored.
 */
export type StoreOutcome =
  | { readonly kind: 'whole' | 'incomplete' }
  | { readonly kind: 'altered'; readonly file: string };

export interface StoredAppPorts {
  readonly files: readonly ShippedFile[];
  /** The folder of the app, with its slash. */
  readonly scope: string;
  readonly caches: CacheStorage;
  readonly fetch: typeof globalThis.fetch;
}

export interface StoredApp {
  /** Fetches and stores whatever is not stored yet; never rejects. */
  fill(): Promise<StoreOutcome>;
  /** Deletes what no file of this version is, and what earlier kinds of worker stored. */
  tidy(): Promise<void>;
  /** Answers for a file of the app, and for every page of it; undefined: the network shall. */
  answer(request: Request): Promise<Response> | undefined;
}

interface Stored {
  readonly outcome: StoreOutcome;
  /** The file, where it is what was built. */
  readonly response?: Response;
}

/** Media types by ending; any other file works whatever it is sent as. */
const TYPES: Readonly<Record<string, RegExp>> = {
  html: /^text\/html\b/,
  js: /^(text|application)\/(x-)?javascript\b/,
  css: /^text\/css\b/,
  svg: /^image\/svg\+xml\b/,
  png: /^image\/png\b/,
};

const PAGE = 'index.html';

/**
 * The copy of the app on this device. A network may answer anything for a file, with status 200: what
 * is stored is what was built, to the byte. A file lies under its address and its digest, so that two
 * versions lie side by side, and no version ever takes what another stored for its own.
 */
export function createStoredApp({ files, scope, caches, fetch }: StoredAppPorts): StoredApp {
  // Whoever clears up after this app goes by the scope at its end.
  const name = `leeway-${scope}`;
  const addressOf = ({ url }: ShippedFile) => new URL(url, scope).href;
  const keyOf = (file: ShippedFile) => `${addressOf(file)}?${encodeURIComponent(file.integrity)}`;
  const byAddress = new Map(files.map((file) => [addressOf(file), file]));
  const page = files.find(({ url }) => url === PAGE);
  let filling: Promise<StoreOutcome> | undefined;

  async function fillAnew(): Promise<StoreOutcome> {
    const cache = await caches.open(name);
    const stored = new Set((await cache.keys()).map(({ url }) => url));
    const missing = files.filter((file) => !stored.has(keyOf(file)));
    const outcomes = await Promise.all(missing.map(async (file) => (await store(file)).outcome));
    const isWrong = ({ kind }: StoreOutcome) => kind !== 'whole';
    return (
      outcomes.find(({ kind }) => kind === 'altered') ?? outcomes.find(isWrong) ?? { kind: 'whole' }
    );
  }

  async function store(file: ShippedFile): Promise<Stored> {
    // What the browser keeps by itself will do, unless it is a wrong answer, marked as good for a year.
    const kept = await storeFrom(file, 'default');
    return kept.response ? kept : storeFrom(file, 'reload');
  }

  async function storeFrom(file: ShippedFile, cache: RequestCache): Promise<Stored> {
    try {
      const sent = await fetch(addressOf(file), { cache });
      if (sent.status !== 200) return { outcome: { kind: 'incomplete' } };
      const copy = sent.clone();
      const body = await sent.arrayBuffer();
      if (!hasItsType(file, sent) || (await integrityOf(body)) !== file.integrity) {
        return { outcome: { kind: 'altered', file: file.url } };
      }
      // A page may not be answered with what a host redirected.
      const response = sent.redirected ? new Response(body, sent) : copy;
      await (await caches.open(name)).put(keyOf(file), response.clone());
      return { outcome: { kind: 'whole' }, response };
    } catch {
      return { outcome: { kind: 'incomplete' } };
    }
  }

  async function answerFor(file: ShippedFile, request: Request): Promise<Response> {
    // One question to the browser, where opening the cache first takes two.
    const stored = await caches.match(keyOf(file), { cacheName: name }).catch(() => null);
    // What is not what was built is passed on, as without a worker, and never kept.
    return stored ?? (await store(file)).response ?? fetch(request);
  }

  return {
    fill() {
      filling ??= fillAnew()
        .catch((): StoreOutcome => ({ kind: 'incomplete' }))
        .finally(() => {
          filling = undefined;
        });
      return filling;
    },
    async tidy() {
      const cache = await caches.open(name);
      const own = new Set(files.map(keyOf));
      const strangers = (await cache.keys()).filter(({ url }) => !own.has(url));
      await Promise.all(strangers.map((key) => cache.delete(key)));
      const others = (await caches.keys()).filter((one) => one.endsWith(scope) && one !== name);
      await Promise.all(others.map((one) => caches.delete(one)));
    },
    answer(request) {
      if (request.method !== 'GET') return undefined;
      const { origin, pathname } = new URL(request.url);
      const asked = byAddress.get(origin + pathname);
      const file = asked ?? (request.mode === 'navigate' ? page : undefined);
      return file && answerFor(file, request);
    },
  };
}

function hasItsType({ url }: ShippedFile, { headers }: Response): boolean {
  const type = TYPES[url.slice(url.lastIndexOf('.') + 1)];
  return type?.test(headers.get('Content-Type') ?? '') ?? true;
}

async function integrityOf(body: ArrayBuffer): Promise<string> {
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', body));
  return `sha256-${btoa(String.fromCharCode(...digest))}`;
}
