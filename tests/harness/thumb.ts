import type { Locator, Page } from 'playwright-core';

/** The least width and height of anything to be pressed, CSS pixels. */
export const THUMB_PX = 44;

/**
 * Touches the middle of an element, as a thumb does.
 *
 * @param atS when the hardware says it was, s since 1970; left out, now
 * @throws Error where it is too small for a thumb, hidden under something, or out of reach.
 */
export async function tap(page: Page, target: Locator, atS?: number): Promise<void> {
  await target.waitFor();
  await target.scrollIntoViewIfNeeded();
  const box = await target.boundingBox();
  if (!box) throw new Error(`${target} is not on the page`);
  if (box.width < THUMB_PX || box.height < THUMB_PX) {
    throw new Error(`${target} is only ${box.width} by ${box.height} px`);
  }
  const x = box.x + box.width / 2;
  const y = box.y + box.height / 2;
  const isOnTop = await target.evaluate(
    (element, at) => element.contains(document.elementFromPoint(at.x, at.y)),
    { x, y },
  );
  if (!isOnTop) throw new Error(`${target} lies under something else`);
  if (atS === undefined) await page.touchscreen.tap(x, y);
  else await tapAt(page, x, y, atS);
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
