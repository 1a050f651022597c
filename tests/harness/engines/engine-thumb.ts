import { expect, vi } from 'vitest';
import { PATIENCE_MS } from '../patience';
import type { EnginePage } from './engine-page';
import { type Found, type Target, whereIs } from './where-is';

/** How long the page may take to come to what a test waits for. */
const PATIENCE = { timeout: PATIENCE_MS, interval: 30 };

/** Reads again and again until what is read is as expected; works outside a test, too. */
export function eventually<T>(read: () => T | Promise<T>) {
  const until = (check: (value: T) => void) =>
    vi.waitFor(async () => check(await read()), PATIENCE);
  return {
    toBe: (expected: T) => until((value) => expect(value).toBe(expected)),
    toEqual: (expected: T) => until((value) => expect(value).toEqual(expected)),
    toMatch: (expected: RegExp) => until((value) => expect(value).toMatch(expected)),
  };
}

/** Waits until such an element is on the page. */
export async function waitFor(page: EnginePage, target: Target): Promise<void> {
  await eventually(() => seen(page, target)).toBe(true);
}

export async function seen(page: EnginePage, target: Target): Promise<boolean> {
  return (await locate(page, target)) !== null;
}

/** Touches the middle of an element. Throws where that lies under something else. */
export async function tap(page: EnginePage, target: Target): Promise<void> {
  const found = await vi.waitFor(async () => {
    const at = await locate(page, target, true);
    if (!at?.isOnTop) throw new Error(`${target.css} ${target.name ?? ''} cannot be touched`);
    return at;
  }, PATIENCE);
  await page.tapAt(found.x, found.y);
}

/** Touches the button of that name. */
export const tapButton = (page: EnginePage, name: string | RegExp) =>
  tap(page, { css: 'button', name });

/** Types a value into a field of that name, instead of what it holds. */
export async function fill(page: EnginePage, name: string, value: string): Promise<void> {
  const field = { css: 'input', name };
  await tap(page, field);
  await eventually(() => page.evaluate(() => document.activeElement?.tagName)).toBe('INPUT');
  await page.typeOver(value);
}

/** The text of the first such element, spaces made one; '' where there is none. */
export async function textOf(page: EnginePage, css: string): Promise<string> {
  const text = await page.evaluate(
    (selector) => document.querySelector(selector)?.textContent ?? '',
    css,
  );
  return text.replace(/\s+/g, ' ').trim();
}

export async function untilRendered(page: EnginePage): Promise<void> {
  await eventually(() => textOf(page, '#app')).toMatch(/./);
  const isToCome = () => page.evaluate(() => document.querySelector('.late-part') !== null);
  await eventually(isToCome).toBe(false);
}

/** Waits until the page would open again without a network. */
export async function untilOfflineReady(page: EnginePage): Promise<void> {
  await eventually(() =>
    page.evaluate(() => navigator.serviceWorker.controller?.state ?? 'none'),
  ).toBe('activated');
}

/** Changes reach the screen within two frames. */
export async function settle(page: EnginePage): Promise<void> {
  await page.evaluate(
    () =>
      new Promise<void>((resolve) => {
        requestAnimationFrame(() => requestAnimationFrame(() => resolve()));
      }),
  );
}

function locate(page: EnginePage, { css, name }: Target, brings = false): Promise<Found | null> {
  const source = name instanceof RegExp ? name.source : '';
  const asked = { css, source, brings };
  // A driver may make null of what is undefined.
  return page.evaluate(whereIs, typeof name === 'string' ? { ...asked, name } : asked);
}
