import { readFile } from 'node:fs/promises';
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join, normalize, sep } from 'node:path';
import { promisify } from 'node:util';
import { gzip } from 'node:zlib';
import { contentType } from './content-type';

export interface StaticServerOptions {
  /** The folder to serve. */
  readonly folder: string;
  /** Where on the host it appears; begins and ends with a slash. */
  readonly basePath?: string;
  /** 0 or left out: any free one. */
  readonly port?: number;
  /** The address to listen on; left out, this machine alone can connect. */
  readonly host?: string;
}

export interface StaticServer {
  /** Ends with the base path. */
  readonly url: string;
  readonly origin: string;
  readonly port: number;
  /** The path of every request so far, in the order they came. */
  readonly requests: readonly string[];
  /** From the next request on, serve another folder: a new version is deployed. */
  deploy(folder: string): void;
  /** Stops listening and cuts every open connection; does nothing the second time. */
  stop(): Promise<void>;
}

/** Media types of text; pictures are packed as they are. */
const PACKABLE = /^text|json|svg/;

/** Files whose name carries a hash of their content never change. */
const HASHED = /^assets[/\\].+-[\w-]{8}\.\w+$/;

/**
 * A plain host of static files, as strict as a good one: a missing file is a 404, never the page
 * instead; only hashed files may be cached without asking again; text is packed for whoever unpacks it.
 *
 * @throws whatever `listen` does, `EADDRINUSE` for a taken port.
 */
export async function startStaticServer(options: StaticServerOptions): Promise<StaticServer> {
  const { basePath = '/', host = '127.0.0.1' } = options;
  let folder = options.folder;
  const requests: string[] = [];
  const server = createServer((request, response) => {
    requests.push(request.url ?? '');
    void answer(request, response, folder, basePath);
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
    stop: () =>
      new Promise((resolve) => {
        // It fails only when the server is not running, which is what is wanted.
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}

async function answer(
  request: IncomingMessage,
  response: ServerResponse,
  folder: string,
  basePath: string,
): Promise<void> {
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    response.writeHead(405, { Allow: 'GET, HEAD' }).end();
    return;
  }
  const path = requestPath(request);
  if (`${path}/` === basePath) {
    response.writeHead(301, { Location: basePath }).end();
    return;
  }
  const file = path?.startsWith(basePath) ? fileWithin(path.slice(basePath.length)) : undefined;
  const body = file === undefined ? undefined : await readIfFile(join(folder, file));
  if (file === undefined || body === undefined) {
    response.writeHead(404, { 'Content-Type': 'text/plain; charset=utf-8' }).end('Not found\n');
    return;
  }
  const isPacked = PACKABLE.test(contentType(file)) && takesGzip(request);
  const sent = isPacked ? await promisify(gzip)(body) : body;
  response.writeHead(200, {
    'Content-Type': contentType(file),
    'Content-Length': sent.length,
    ...(isPacked && { 'Content-Encoding': 'gzip' }),
    Vary: 'Accept-Encoding',
    'Cache-Control': HASHED.test(file) ? 'public, max-age=31536000, immutable' : 'no-cache',
    'X-Content-Type-Options': 'nosniff',
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
