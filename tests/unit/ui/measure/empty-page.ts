import { cleanup, fireEvent, screen } from '@testing-library/preact';
import { afterEach, beforeEach, vi } from 'vitest';

/** Has every test of the file begin on an empty page, in a document that has no layout to watch. */
export function onEmptyPage(): void {
  beforeEach(() => {
    vi.stubGlobal(
      'ResizeObserver',
      class {
        observe() {}
        disconnect() {}
      },
    );
  });
  afterEach(() => {
    cleanup();
    vi.unstubAllGlobals();
  });
}

export async function press(name: string | RegExp): Promise<void> {
  fireEvent.click(await screen.findByRole('button', { name }));
}
