import { afterAll, beforeAll, expect, it } from 'vitest';
import { type OpenApp, openApp } from '../harness/open-app';
import { type StaticServer, startStaticServer } from '../harness/static-server';
import { watchPolicy } from '../harness/watch-policy';

let app: OpenApp;
let elsewhere: StaticServer;
beforeAll(async () => {
  elsewhere = await startStaticServer({ folder: 'dist' });
  app = await openApp();
});
afterAll(async () => {
  await app.close();
  await elsewhere.stop();
});

/** What a page that has been got at may try: to run something, or to send something away. */
const ATTEMPTS: readonly [string, RegExp, (url: string) => unknown][] = [
  ['an inline script', /^(script-src-elem|require-trusted-types-for) /, inlineScript],
  ['text run as a script', /^(script-src|require-trusted-types-for) /, runText],
  ['markup made of text', /^require-trusted-types-for /, markupOfText],
  ['a handler in markup', /^(script-src-attr|require-trusted-types-for) /, handler],
  ['a script from elsewhere', /^(script-src-elem|require-trusted-types-for) /, script],
  ['a worker of another address', /^(worker-src|require-trusted-types-for) /, worker],
  ['another policy for addresses', /^trusted-types /, policy],
  ['a picture from elsewhere', /^img-src /, picture],
  ['a page from elsewhere', /^frame-src /, frame],
  ['a style from elsewhere', /^style-src-elem /, style],
  ['a request to elsewhere', /^connect-src /, request],
  ['a request to its own host', /^connect-src /, ownRequest],
  ['a socket', /^connect-src /, socket],
  ['a beacon', /^connect-src /, beacon],
  ['a form', /^form-action /, form],
];

it.each(ATTEMPTS)('refuses %s', async (_, directive, attempt) => {
  const broken = await watchPolicy(app.page);
  // What throws is refused too; the policy's own word on it is what counts.
  await app.page.evaluate(attempt, elsewhere.url).catch(() => undefined);
  await expect.poll(broken).toContainEqual(expect.stringMatching(directive));
  expect(await app.page.evaluate(() => 'isOverrun' in window)).toBe(false);
  expect(elsewhere.requests).toEqual([]);
});

function inlineScript() {
  const element = document.createElement('script');
  element.append('window.isOverrun = true');
  document.body.append(element);
}

/** A moment later: what the debugger itself evaluates is not bound by the policy. */
function runText() {
  return new Promise((resolve, reject) => {
    setTimeout(() => {
      try {
        // biome-ignore lint/security/noGlobalEval: it is what must be refused.
        resolve(globalThis.eval('window.isOverrun = true'));
      } catch (error) {
        reject(error);
      }
    });
  });
}

function markupOfText() {
  document.createElement('div').innerHTML = '<img src="x" onerror="window.isOverrun = true">';
}

function handler() {
  const button = document.createElement('button');
  button.setAttribute('onclick', 'window.isOverrun = true');
  button.click();
}

function script(url: string) {
  const element = document.createElement('script');
  element.setAttribute('src', `${url}assets/any.js`);
  document.body.append(element);
}

function worker() {
  new Worker('./sw.js');
}

function policy() {
  const { trustedTypes } = window as unknown as {
    trustedTypes: { createPolicy(name: string, rules: object): void };
  };
  trustedTypes.createPolicy('another', { createScriptURL: (url: string) => url });
}

function picture(url: string) {
  new Image().src = `${url}icons/icon-192.png`;
}

function frame(url: string) {
  const element = document.createElement('iframe');
  element.src = url;
  document.body.append(element);
}

function style(url: string) {
  const element = document.createElement('link');
  element.rel = 'stylesheet';
  element.href = `${url}assets/any.css`;
  document.body.append(element);
}

async function request(url: string) {
  await fetch(`${url}?all=I-know`);
}

async function ownRequest() {
  await fetch(document.baseURI);
}

function socket(url: string) {
  new WebSocket(url.replace('http', 'ws'));
}

function beacon(url: string) {
  navigator.sendBeacon(url, 'all I know');
}

function form(url: string) {
  const element = document.createElement('form');
  element.action = url;
  document.body.append(element);
  element.submit();
}
