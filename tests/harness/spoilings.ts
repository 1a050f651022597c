import type { ShippedFile } from '../../src/service-worker/stored-app';
import type { Disturbance } from './static-server';

/** What a hall's network answers for anything, until somebody has logged in. */
export const LOGIN_PAGE: Disturbance = {
  type: 'text/html; charset=utf-8',
  body: '<!doctype html><title>Log in</title><p>Welcome. Log in to go on.</p>',
};

/** What else a script may be answered with while a release is half out. */
const HALF_OUT: readonly Disturbance[] = [
  { type: 'text/html; charset=utf-8', body: '<!doctype html><div id="app"></div>' },
  { type: 'text/plain' },
  { status: 500 },
  { status: 404, body: 'Not found' },
];

/** Which files are spoiled of those that a release has. */
export type Chosen = (files: readonly ShippedFile[]) => readonly ShippedFile[];

export const everyFile: Chosen = (files) => files;

/** What a browser takes files of one type for is the same for all of them. */
export const oneOfEachType: Chosen = (files) => [
  ...new Map(files.map((file) => [file.url.split('.').at(-1), file])).values(),
];

type Spoiling = readonly [url: string, how: Disturbance];

/** Files of a release with the login page for each, and its first script with all else. */
export function spoilings(files: readonly ShippedFile[], chosen = everyFile): Spoiling[] {
  const [script] = files.filter(({ url }) => url.endsWith('.js'));
  return [
    ...chosen(files).map(({ url }): Spoiling => [url, LOGIN_PAGE]),
    ...HALF_OUT.map((how): Spoiling => [script?.url ?? '', how]),
  ];
}

/** The same, as few times as one file is spoiled in one way at a time. */
export function spoiledAtOnce(files: readonly ShippedFile[]): Map<string, Disturbance>[] {
  const rounds = Array.from({ length: 1 + HALF_OUT.length }, () => new Map<string, Disturbance>());
  for (const [at, [url, how]] of spoilings(files).entries()) {
    const free = [...rounds.slice(at % rounds.length), ...rounds].find((round) => !round.has(url));
    free?.set(url, how);
  }
  return rounds;
}
