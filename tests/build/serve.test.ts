import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { readFileSync } from 'node:fs';
import { connect } from 'node:net';
import { createInterface } from 'node:readline';
import type { Readable } from 'node:stream';
import { afterEach, describe, expect, it } from 'vitest';
import { type StaticServer, startStaticServer } from '../harness/static-server';
import { bytesOf, shipped, textOf } from './dist';

const DEVELOPERS = readFileSync('DEVELOPERS.md', 'utf8');

describe('the static server', () => {
  let server: StaticServer | undefined;
  afterEach(() => server?.stop());

  async function ask(path: string, basePath = '/some/where/', headers = {}) {
    server = await startStaticServer({ folder: 'dist', basePath });
    return fetch(server.origin + path, { redirect: 'manual', headers });
  }

  it('serves the app below its base path and nowhere else', async () => {
    expect(await (await ask('/some/where/')).text()).toContain('<div id="app">');
    await server?.stop();
    expect((await ask('/')).status).toBe(404);
  });

  it('sends a folder named without its slash to the one with it', async () => {
    const response = await ask('/some/where');
    expect(response.status).toBe(301);
    expect(response.headers.get('location')).toBe('/some/where/');
  });

  it('answers for a missing script with 404, not with the page', async () => {
    expect((await ask('/some/where/assets/gone-12345678.js')).status).toBe(404);
  });

  it.each(['/../package.json', '/%2e%2e/package.json', '/..%2fpackage.json', '/%00', '/%zz'])(
    'does not climb out of its folder for %s',
    async (path) => {
      server = await startStaticServer({ folder: 'dist' });
      expect(await statusOfRawPath(server.port, path)).toBe(404);
    },
  );

  it.each(['index.html', 'sw.js', 'manifest.webmanifest'])(
    'has a browser ask again for %s each time',
    async (file) => {
      expect((await ask(`/some/where/${file}`)).headers.get('cache-control')).toBe('no-cache');
    },
  );

  it('sends the headers that DEVELOPERS.md asks of a host', async () => {
    const [, block = ''] = /^```\n(Content-Security-Policy:[\s\S]*?)```$/m.exec(DEVELOPERS) ?? [];
    const asked = block.trim().split('\n');
    expect(asked.length).toBeGreaterThan(4);
    const { headers } = await ask('/some/where/');
    for (const line of asked) {
      const [name = '', value] = line.split(': ');
      expect(headers.get(name), name).toBe(value);
    }
  });

  it.each([
    ['a body and a type', { body: 'Log in', type: 'text/html' }, 200, 'Log in'],
    ['a status', { status: 500 }, 500, textOf('favicon.svg')],
  ] as const)('can have a network between that changes %s', async (_, how, status, body) => {
    server = await startStaticServer({ folder: 'dist' });
    server.disturb((path) => (path === 'favicon.svg' ? how : undefined));
    const changed = await fetch(`${server.url}favicon.svg`);
    expect([changed.status, await changed.text()]).toEqual([status, body]);
    expect(await (await fetch(`${server.url}index.html`)).text()).toBe(textOf('index.html'));
    server.disturb(() => 'cut');
    await expect(fetch(server.url)).rejects.toThrow();
    server.disturb();
    expect(await (await fetch(`${server.url}favicon.svg`)).text()).toBe(textOf('favicon.svg'));
  });

  it('lets a browser keep a hashed file for good', async () => {
    const script = shipped.find((file) => /^assets\/.*\.js$/.test(file));
    const { headers } = await ask(`/some/where/${script}`);
    expect(headers.get('cache-control')).toContain('immutable');
    expect(headers.get('content-type')).toBe('text/javascript; charset=utf-8');
  });

  it.each(['index.html', 'sw.js', 'manifest.webmanifest'])(
    'packs %s for a browser that unpacks it, and the text is the same',
    async (file) => {
      const packed = await ask(`/${file}`, '/', { 'accept-encoding': 'br, gzip;q=0.8' });
      expect(packed.headers.get('content-encoding')).toBe('gzip');
      expect(Number(packed.headers.get('content-length'))).toBeLessThan(bytesOf(file).length);
      expect(packed.headers.get('vary')).toBe('Accept-Encoding');
      expect(await packed.text()).toBe(bytesOf(file).toString());
    },
  );

  it.each([
    ['sw.js', 'identity'],
    ['sw.js', 'gzip;q=0, br'],
    ['icons/icon-192.png', 'gzip'],
  ])('sends %s as it is where %s is asked for', async (file, coding) => {
    const { headers } = await ask(`/${file}`, '/', { 'accept-encoding': coding });
    expect(headers.get('content-encoding')).toBeNull();
    expect(Number(headers.get('content-length'))).toBe(bytesOf(file).length);
  });

  it('can be stopped in the middle of a kept-alive connection, and its port taken again', async () => {
    await (await ask('/some/where/')).text();
    const { port } = server as StaticServer;
    await server?.stop();
    server = await startStaticServer({ folder: 'dist', port });
    expect(await statusOfRawPath(port, '/')).toBe(200);
  });
});

describe('npm start', () => {
  let child: ChildProcess | undefined;
  afterEach(() => child?.kill());

  it('says where the app is, and it is there, for this machine only', async () => {
    child = spawn(process.execPath, ['--import', 'tsx', 'tests/harness/serve.ts', '--port', '0'], {
      stdio: ['ignore', 'pipe', 'inherit'],
    });
    const lines = createInterface({ input: child.stdout as Readable });
    const [line] = (await once(lines, 'line')) as [string];
    const address = /^Leeway is at (http:\/\/localhost:\d+\/)$/.exec(line)?.[1] ?? '';
    expect(await (await fetch(address)).text()).toContain('<div id="app">');
    // Another address of this machine, as any other machine would see it.
    await expect(fetch(address.replace('localhost', '127.0.0.2'))).rejects.toThrow();
  });
});

/** `fetch` tidies a path up before sending it; this sends it as it is. */
async function statusOfRawPath(port: number, path: string): Promise<number> {
  const socket = connect(port, '127.0.0.1');
  socket.write(`GET ${path} HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n`);
  const [head] = (await once(socket, 'data')) as [Buffer];
  socket.destroy();
  return Number(head.toString().split(' ')[1]);
}
