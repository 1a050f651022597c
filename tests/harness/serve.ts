import { networkInterfaces } from 'node:os';
import { parseArgs } from 'node:util';
import { type StaticServer, startStaticServer } from './static-server';

/** Serves the built app to this machine, or with --host to the whole local network. */
const FIRST_PORT = 4180;
const PORTS_TO_TRY = 20;

const { values } = parseArgs({
  options: { host: { type: 'boolean', default: false }, port: { type: 'string' } },
});
const server = await start();
console.log(`Leeway is at ${server.url}`);
if (values.host) {
  for (const address of networkAddresses()) {
    console.log(`On your network it is at http://${address}:${server.port}/`);
  }
  console.log('Opened that way it needs the network: browsers store an app only from https.');
}

async function start(): Promise<StaticServer> {
  const host = values.host ? '0.0.0.0' : '127.0.0.1';
  const asked = values.port === undefined ? undefined : Number(values.port);
  const ports = asked === undefined ? defaultPorts() : [asked];
  for (const port of ports) {
    try {
      return await startStaticServer({ folder: 'dist', port, host });
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== 'EADDRINUSE') throw error;
    }
  }
  throw new Error(`Port ${ports.at(-1)} is taken; choose another with: npm start -- --port 5000`);
}

function defaultPorts(): number[] {
  return Array.from({ length: PORTS_TO_TRY }, (_, i) => FIRST_PORT + i);
}

function networkAddresses(): string[] {
  return Object.values(networkInterfaces())
    .flatMap((addresses) => addresses ?? [])
    .filter(({ family, internal }) => family === 'IPv4' && !internal)
    .map(({ address }) => address);
}
