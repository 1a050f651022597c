import { readFile } from 'node:fs/promises';
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join, normalize, sep } from 'node:path';
import { promisify } from 'node:util';
import { gzip } from 'node:zlib';
import { contentType } from './content-type';
import { HOST_HEADERS } from './host-headers';

export interface StaticServerOptions {
  /** The folder to serve. */
  readonly folder: string;
  /** Where on the host it appears; begins and ends with a slash. */
  readonly basePath?: string;
  /** 0 or left out: any free one. */
  readonly port?: number;
  /** The address to listen on; left out, this machine alone can connect. */
  readonly host?: string;
  /** Whether a page may show the app in a frame, as no good host lets it. */
  readonly isFramed?: boolean;
}

/**
 * What a network does to a file on its way: `cut` lets nothing through; else it is answered with
 * what is given here, the rest as the host has it.
 */
export type Disturbance =
  | 'cut'
  | {
      readonly status?: number;
      readonly type?: string;
      readonly body?: string;
      /** How long a browser may keep it. */
      readonly cache?: string;
    };

export interface StaticServer {
  /** Ends with the base path. */
  readonly url: string;
  readonly origin: string;
  readonly port: number;
  /** The path of every request so far, in the order they came. */
  readonly requests: readonly string[];
  /** From the next request on, serve another folder: a new version is deployed. */
  deploy(folder: string): void;
  /** From the next request on, a network between; left out, an honest one. Told paths within the base. */
  disturb(how?: (path: string) => Disturbance | undefined): void;
  /** Stops listening and cuts every open connection; does nothing the second time. */
  stop(): Promise<void>;
}

const READS: readonly unknown[] = ['GET', 'HEAD'];

/** Media types of text; pictures are packed as they are. */
const PACKABLE = /^text|json|svg/;

const FOR_GOOD = 'public, max-age=31536000, immutable';

/** Files whose name carries a hash of their content never change. */
const HASHED = /^assets[/\\].+-[\w-]{8}\.\w+$/;

/**
 * A plain host of static files, as strict as a good one: a missing file is a 404, never the page
 * instead; only hashed files may be cached without asking again; text is packed for whoever unpacks it.
 *
 * @throws whatever `listen` does, `EADDRINUSE` for a taken port.
 */
export async function startStaticServer(options: StaticServerOptions): Promise<StaticServer> {
  const { basePath = '/', host = '127.0.0.1', isFramed = false } = options;
  let folder = options.folder;
  let disturbance: (path: string) => Disturbance | undefined = () => undefined;
  const requests: string[] = [];
  const server = createServer((request, response) => {
    requests.push(request.url ?? '');
    const path = requestPath(request);
    const within = path?.startsWith(basePath) ? path.slice(basePath.length) : undefined;
    const disturbed = within === undefined ? undefined : disturbance(within);
    if (disturbed === 'cut') response.destroy();
    else if (!READS.includes(request.method)) response.writeHead(405, { Allow: 'GET, HEAD' }).end();
    else if (`${path}/` === basePath) response.writeHead(301, { Location: basePath }).end();
    else void answer(request, response, { folder, within, isFramed, disturbed });
  });
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen(options.port ?? 0, host, resolve);
  });
  const { port } = server.address() as AddressInfo;
  const origin = `http://localhost:${port}`;
  return {
    url: origin + basePath,
    origin,
    port,
    requests,
    deploy: (next) => {
      folder = next;
    },
    disturb: (how = () => undefined) => {
      disturbance = how;
    },
    stop: () =>
      new Promise((resolve) => {
        // It fails only when the server is not running, which is what is wanted.
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}

interface Asked {
  readonly folder: string;
  /** The path within the base; undefined outside it. */
  readonly within: string | undefined;
  readonly isFramed: boolean;
  readonly disturbed: Exclude<Disturbance, 'cut'> | undefined;
}

async function answer(
  request: IncomingMessage,
  response: ServerResponse,
  { folder, within, isFramed, disturbed }: Asked,
): Promise<void> {
  const file = within === undefined ? undefined : fileWithin(within);
  const found = file === undefined ? undefined : await readIfFile(join(folder, file));
  const body = disturbed?.body === undefined ? found : Buffer.from(disturbed.body);
  if (file === undefined || body === undefined) {
    response.writeHead(404, { 'Content-Type': 'text/plain; charset=utf-8' }).end('Not found\n');
    return;
  }
  const type = disturbed?.type ?? contentType(file);
  const isPacked = PACKABLE.test(type) && takesGzip(request);
  const sent = isPacked ? await promisify(gzip)(body, { level: 1 }) : body;
  const { 'Content-Security-Policy': framing, ...rest } = HOST_HEADERS;
  response.writeHead(disturbed?.status ?? 200, {
    ...rest,
    ...(!isFramed && { 'Content-Security-Policy': framing }),
    'Content-Type': type,
    'Content-Length': sent.length,
    ...(isPacked && { 'Content-Encoding': 'gzip' }),
    Vary: 'Accept-Encoding',
    'Cache-Control': disturbed?.cache ?? (HASHED.test(file) ? FOR_GOOD : 'no-cache'),
  });
  response.end(request.method === 'HEAD' ? undefined : sent);
}

/** Whether a client says that it can unpack, and not that it would rather not. */
function takesGzip({ headers }: IncomingMessage): boolean {
  return /\bgzip\b(?!\s*;\s*q=0(\.0*)?\s*(,|$))/.test(`${headers['accept-encoding'] ?? ''}`);
}

/** The decoded path of a request, or undefined where it is not one. */
function requestPath(request: IncomingMessage): string | undefined {
  try {
    return decodeURIComponent(new URL(request.url ?? '/', 'http://localhost').pathname);
  } catch {
    return undefined;
  }
}

/** A relative file path that cannot climb out of its folder, or undefined. */
function fileWithin(path: string): string | undefined {
  const file = normalize(path === '' || path.endsWith('/') ? `${path}index.html` : path);
  return file.startsWith('..') || file.startsWith(sep) || file.includes('\0') ? undefined : file;
}

async function readIfFile(path: string): Promise<Buffer | undefined> {
  try {
    return await readFile(path);
  } catch {
    return undefined;
  }
}
