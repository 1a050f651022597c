import { signal } from '@preact/signals';
import { cleanup, render, screen } from '@testing-library/preact';
import { afterEach, expect, it, vi } from 'vitest';
import { createLate } from '../../../src/state/late';
import { LatePart } from '../../../src/ui/LatePart';
import { createLateParts, inOrder } from '../../../src/ui/late-parts';

afterEach(cleanup);

function show(isAway: boolean) {
  const part = {
    here: signal<string | null>(null),
    isAway: signal(isAway),
    fetch: vi.fn(async () => null),
  };
  const reload = vi.fn();
  render(
    <LatePart part={part} wrapper="main" reload={reload}>
      {(words) => <p>{words}</p>}
    </LatePart>,
  );
  return { part, reload };
}

it('is a quiet place, asked for at once, until it has come', async () => {
  const { part } = show(false);
  expect(screen.getByRole('main').textContent).toBe('');
  await expect.poll(() => part.fetch.mock.calls.length).toBe(1);
  part.here.value = 'Choose';
  await screen.findByText('Choose');
  expect(screen.queryByRole('main')).toBeNull();
});

it('says kindly that it could not be had, with a way out, and goes once it is here', async () => {
  const { part, reload } = show(true);
  expect(screen.getByRole('status').textContent).toMatch(/^This part is not on the device yet/);
  screen.getByRole('button', { name: 'Load again' }).click();
  expect(reload).toHaveBeenCalledTimes(1);
  part.here.value = 'Kit';
  await screen.findByText('Kit');
  expect(screen.queryByRole('status')).toBeNull();
});

it('hands the keyboard, that waited on the place, to the heading of what came', async () => {
  const part = {
    here: signal<string | null>(null),
    isAway: signal(false),
    fetch: async () => null,
  };
  render(
    <main tabIndex={-1}>
      <LatePart part={part} reload={() => {}}>
        {(words) => <h1 tabIndex={-1}>{words}</h1>}
      </LatePart>
    </main>,
  );
  screen.getByRole('main').focus();
  part.here.value = 'How it went';
  const heading = await screen.findByRole('heading', { name: 'How it went' });
  await expect.poll(() => document.activeElement).toBe(heading);
});

it('is among what is fetched when idle, whichever part it is', () => {
  const models = createLate(async () => {
    throw new Error('none are needed here');
  }, window);
  const parts = createLateParts(models, window);
  expect(new Set(inOrder(parts))).toEqual(new Set(Object.values(parts)));
  expect(inOrder(parts)).toHaveLength(Object.keys(parts).length);
});
