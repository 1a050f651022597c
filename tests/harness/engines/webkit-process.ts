import { type ChildProcess, type SpawnOptions, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtemp, rm } from 'node:fs/promises';
import { type AddressInfo, createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Readable } from 'node:stream';
import { enginesFetched } from '../engines-fetched';
import { findWebKit } from './find-webkit';

/** A driver that waits for a session, on a screen and with a home folder of its own. */
export interface WebKitProcess {
  readonly url: string;
  readonly browser: string;
  readonly home: string;
  readonly env: NodeJS.ProcessEnv;
  stop(): Promise<void>;
}

export async function startWebKit(): Promise<WebKitProcess> {
  await enginesFetched();
  const { driver, browser, screen } = await findWebKit();
  const home = await mkdtemp(join(tmpdir(), 'leeway-webkit-'));
  const started: ChildProcess[] = [];
  const start = (program: string, args: string[], options: SpawnOptions) => {
    const child = spawn(program, args, options);
    started.push(child);
    // Where a test run breaks off, nobody else would.
    process.once('exit', () => child.kill());
    return child;
  };
  // It picks a number that is free, and tells it on its fourth pipe.
  const size = ['-screen', '0', '800x1000x24', '-nolisten', 'tcp'];
  const shown = start(screen, ['-displayfd', '3', ...size], {
    stdio: ['ignore', 'ignore', 'ignore', 'pipe'],
  });
  const [display] = (await once(shown.stdio[3] as Readable, 'data')) as [Buffer];
  const env = { ...process.env, DISPLAY: `:${String(display).trim()}`, HOME: home };
  const port = await freePort();
  start(driver, [`--port=${port}`], { env, stdio: 'ignore' });
  const url = `http://127.0.0.1:${port}`;
  await untilAnswers(url);
  return {
    url,
    browser,
    home,
    env,
    stop: async () => {
      for (const child of started.reverse()) child.kill();
      await rm(home, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 });
    },
  };
}

/** One that was free a moment ago. */
async function freePort(): Promise<number> {
  const server = createServer().listen(0, '127.0.0.1');
  await once(server, 'listening');
  const { port } = server.address() as AddressInfo;
  server.close();
  await once(server, 'close');
  return port;
}

async function untilAnswers(url: string): Promise<void> {
  for (let attempt = 0; attempt < 200; attempt++) {
    const answers = await fetch(`${url}/status`).then(
      () => true,
      () => false,
    );
    if (answers) return;
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  throw new Error('WebKitWebDriver does not answer.');
}
