import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { afterEach, expect, it } from 'vitest';
import { HelpLinks } from '../../../../src/ui/HelpLinks';
import { createRouter } from '../../../../src/ui/route';

afterEach(cleanup);

it('opens the words and the settings from any place, and comes back to it', async () => {
  window.location.hash = '#shot';
  const router = createRouter(window);
  render(<HelpLinks app={{ router }} />);
  for (const [name, panel] of [
    ['Words explained', 'words'],
    ['Settings', 'preferences'],
  ] as const) {
    fireEvent.click(screen.getByRole('button', { name }));
    expect(router.route.value).toEqual({ place: 'kit', panel });
    router.close();
    await expect.poll(() => router.route.value.place).toBe('shot');
  }
});
