import { Window as NewWindow } from 'happy-dom';
import { describe, expect, it } from 'vitest';
import { onPageHide } from '../../src/store/on-page-hide';

function newPage() {
  const page = new NewWindow() as unknown as Window & typeof globalThis;
  let visibility: DocumentVisibilityState = 'visible';
  Object.defineProperty(page.document, 'visibilityState', { get: () => visibility });
  const turn = (state: DocumentVisibilityState) => {
    visibility = state;
    page.document.dispatchEvent(new page.Event('visibilitychange'));
  };
  return { page, turn };
}

describe('listening for the page going away', () => {
  it('hears it hidden and replaced, not shown again', () => {
    const { page, turn } = newPage();
    let heard = 0;
    onPageHide(() => {
      heard += 1;
    }, page);
    turn('hidden');
    expect(heard).toBe(1);
    turn('visible');
    expect(heard).toBe(1);
    page.dispatchEvent(new page.Event('pagehide'));
    expect(heard).toBe(2);
  });

  it('stops when asked', () => {
    const { page, turn } = newPage();
    let heard = 0;
    const stop = onPageHide(() => {
      heard += 1;
    }, page);
    stop();
    turn('hidden');
    page.dispatchEvent(new page.Event('pagehide'));
    expect(heard).toBe(0);
  });
});
