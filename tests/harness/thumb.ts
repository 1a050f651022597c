import type { Locator, Page } from 'playwright-core';

/** The least width and height of anything to be pressed, CSS pixels. */
export const THUMB_PX = 44;

/**
 * Touches the middle of an element, as a thumb does, once it stands still: the clock must run.
 *
 * @param atS when the hardware says it was, s since 1970; left out, now
 * @throws Error where it is too small for a thumb, hidden under something, or out of reach.
 */
export async function tap(page: Page, target: Locator, atS?: number): Promise<void> {
  let found = await target.evaluateAll(bringIntoView);
  while (!found) {
    await target.waitFor();
    found = await target.evaluateAll(bringIntoView);
  }
  const { x, y, width, height, isOnTop } = found;
  if (width < THUMB_PX || height < THUMB_PX) {
    throw new Error(`${target} is only ${width} by ${height} px`);
  }
  if (!isOnTop) throw new Error(`${target} lies under something else`);
  if (atS === undefined) await page.touchscreen.tap(x, y);
  else await tapAt(page, x, y, atS);
}

/**
 * Scrolls to an element, and tells where it is once it stands still; null where it is not shown.
 * Runs in the page, in one go: each look from without costs as much as the tap itself.
 */
async function bringIntoView([element, ...others]: Element[]) {
  if (others.length > 0) throw new Error(`there are ${1 + others.length} of what is to be tapped`);
  if (!element?.checkVisibility({ visibilityProperty: true })) return null;
  const scroll: unknown = Reflect.get(element, 'scrollIntoViewIfNeeded');
  if (typeof scroll === 'function') scroll.call(element);
  await new Promise(requestAnimationFrame);
  let before = '';
  let box = element.getBoundingClientRect();
  while (before !== JSON.stringify(box)) {
    before = JSON.stringify(box);
    await new Promise(requestAnimationFrame);
    box = element.getBoundingClientRect();
  }
  if (!element.isConnected) return null;
  const { width, height } = box;
  const [x, y] = [box.x + width / 2, box.y + height / 2];
  return { x, y, width, height, isOnTop: element.contains(document.elementFromPoint(x, y)) };
}

async function tapAt(page: Page, x: number, y: number, timestamp: number): Promise<void> {
  const devtools = await page.context().newCDPSession(page);
  const send = (type: 'touchStart' | 'touchEnd', touchPoints: { x: number; y: number }[]) =>
    devtools.send('Input.dispatchTouchEvent', { type, touchPoints, timestamp });
  await send('touchStart', [{ x, y }]);
  await send('touchEnd', []);
  await devtools.detach();
}

/** Touches the button of that name. */
export async function tapButton(page: Page, name: string | RegExp): Promise<void> {
  const exact = typeof name === 'string';
  await tap(page, page.getByRole('button', { name, exact }).first());
}

/** Opens the control of one input by its tile. */
export async function openTile(page: Page, input: string): Promise<void> {
  await tap(page, page.locator(`[data-opens="${input}"]`));
  await page.locator('#input-control').waitFor();
}

/** Does something to one of a list, which lies behind the button of its row. */
export async function tapAction(page: Page, action: string, name: string): Promise<void> {
  await tapButton(page, `More: ${name}`);
  await tapButton(page, `${action} ${name}`);
}

/** Shows the engine's own numbers of the record that is open. */
export async function openEngineNumbers(page: Page): Promise<void> {
  await tap(page, page.locator('.engine-numbers > summary'));
}
