import { signal } from '@preact/signals';
import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { NewsBar } from '../../../src/ui/NewsBar';

afterEach(cleanup);

function setUp() {
  const applyUpdate = signal<(() => void) | null>(null);
  const storageLines = signal<readonly string[]>([]);
  render(<NewsBar news={{ applyUpdate, isReadyOffline: signal(false), storageLines }} />);
  return { applyUpdate, storageLines };
}

describe('the news', () => {
  it('are a status with nothing in it while there are none', () => {
    setUp();
    expect(screen.getByRole('status').textContent).toBe('');
  });

  it('offer a new version, and take it into use only when told to, once', async () => {
    const { applyUpdate } = setUp();
    const apply = vi.fn();
    applyUpdate.value = apply;
    const button = await screen.findByRole<HTMLButtonElement>('button', { name: 'Update now' });
    expect(apply).not.toHaveBeenCalled();
    fireEvent.click(button);
    expect(apply).toHaveBeenCalledTimes(1);
    await expect.poll(() => button.disabled).toBe(true);
  });

  it('tell of trouble with the storage', async () => {
    const { storageLines } = setUp();
    storageLines.value = ['Nothing outlives this visit.'];
    await screen.findByText(/Nothing outlives this visit/);
  });
});
