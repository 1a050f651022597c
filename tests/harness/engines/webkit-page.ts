import type { Page } from 'playwright-core';
import { PATIENCE_MS } from '../patience';
import { type EnginePage, PHONE_SIZE } from './engine-page';
import { openSession, type WebDriver } from './web-driver';
import { startWebKit, type WebKitProcess } from './webkit-process';

/** A WebKit of its own, empty of any data, as narrow as its window gets: 447 px. */
export async function openWebKit(): Promise<EnginePage> {
  const webkit = await startWebKit();
  try {
    const driver = await openSession(webkit.url, {
      'webkitgtk:browserOptions': { binary: webkit.browser, args: ['--automation'] },
    });
    await driver.post('/window/rect', PHONE_SIZE);
    // The file field is looked for as soon as a page begins to show.
    await driver.post('/timeouts', { implicit: PATIENCE_MS });
    return webkitPage(webkit, driver);
  } catch (error) {
    await webkit.stop();
    throw error;
  }
}

function webkitPage(webkit: WebKitProcess, driver: WebDriver): EnginePage {
  const evaluate = ((work: string | (() => unknown), arg: unknown) =>
    evaluateIn(driver, String(work), arg)) as Page['evaluate'];
  const problems: string[] = [];
  // What a page noted is lost with it.
  const leave = async (go: () => Promise<unknown>) => {
    problems.push(...(await evaluate(takeNotes)));
    await go();
    await evaluate(noteProblems);
  };
  const goTo = async (url: string) => {
    await driver.post('/frame', { id: null });
    await driver.post('/url', { url: 'about:blank' });
    await driver.post('/url', { url });
  };
  return {
    engine: 'WebKit',
    downloads: webkit.home,
    open: (url) => leave(() => goTo(url)),
    openNarrow: (url) =>
      leave(async () => {
        await goTo(new URL('/nowhere', url).href);
        await evaluate(frameOf, { url, ...PHONE_SIZE });
        await driver.post('/frame', { id: 0 });
      }),
    reload: () => leave(() => driver.post('/refresh', {})),
    evaluate,
    tapAt: async (x, y) => {
      await driver.post('/actions', { actions: [clickAt(x, y)] });
    },
    typeOver: async (text) => {
      await driver.post('/actions', { actions: [keysOver(text)] });
    },
    pickFile: async (path) => {
      const field = { using: 'css selector', value: 'input[type=file]' };
      const found = (await driver.post('/element', field)) as Record<string, string>;
      await driver.post(`/element/${Object.values(found)[0]}/value`, { text: path });
    },
    screenshot: async () => Buffer.from((await driver.get('/screenshot')) as string, 'base64'),
    problems: async () => {
      problems.push(...(await evaluate(takeNotes)));
      return problems;
    },
    close: async () => {
      // A browser that is gone already has nothing left to end.
      await driver.end().catch(() => undefined);
      await webkit.stop();
    },
  };
}

async function evaluateIn(driver: WebDriver, work: string, arg: unknown): Promise<unknown> {
  const script = `
    const [work, done] = [${work}, arguments[1]];
    Promise.resolve()
      .then(() => work(arguments[0]))
      .then((value) => done({ value }), (error) => done({ error: String(error) }));`;
  const answer = await driver.post('/execute/async', { script, args: [arg ?? null] });
  const { value, error } = answer as { value?: unknown; error?: string };
  if (error !== undefined) throw new Error(`in the page: ${error}`);
  return value;
}

function clickAt(x: number, y: number): object {
  const at = { x: Math.round(x), y: Math.round(y) };
  return {
    type: 'pointer',
    id: 'finger',
    parameters: { pointerType: 'mouse' },
    actions: [
      { type: 'pointerMove', duration: 0, ...at },
      { type: 'pointerDown', button: 0 },
      { type: 'pointerUp', button: 0 },
    ],
  };
}

/** The Control key's name in the protocol. */
const CONTROL = '\uE009';

function keysOver(text: string): object {
  const press = (key: string) => [
    { type: 'keyDown', value: key },
    { type: 'keyUp', value: key },
  ];
  return {
    type: 'key',
    id: 'keys',
    actions: [
      { type: 'keyDown', value: CONTROL },
      ...press('a'),
      { type: 'keyUp', value: CONTROL },
      ...[...text].flatMap(press),
    ],
  };
}

/** Fills the page with a frame of a phone's size, and waits until it has loaded. */
async function frameOf({ url, width, height }: { url: string; width: number; height: number }) {
  const frame = document.createElement('iframe');
  Object.assign(frame, { src: url, width, height });
  frame.style.cssText = 'position: fixed; inset: 0 auto auto 0; border: 0;';
  document.body.replaceChildren(frame);
  await new Promise((resolve) => {
    frame.onload = resolve;
  });
}

interface Noting {
  notedProblems?: string[];
}

/** From here on; what goes wrong before, while a page loads, `load-in-webkit` looks for. */
function noteProblems(): void {
  const noted: string[] = [];
  (window as Noting).notedProblems = noted;
  const { error } = console;
  console.error = (...told: unknown[]) => {
    noted.push(`console error: ${told.join(' ')}`);
    error.apply(console, told);
  };
  addEventListener('error', (event) => noted.push(`uncaught: ${event.message}`));
  addEventListener('unhandledrejection', ({ reason }) => noted.push(`uncaught: ${reason}`));
  addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI }) =>
    noted.push(`refused by ${violatedDirective}: ${blockedURI}`),
  );
}

function takeNotes(): string[] {
  return (window as Noting).notedProblems?.splice(0) ?? [];
}
