import { signal } from '@preact/signals';
import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { MODEL_VERSION } from '../../../src/engine/fit/model-version';
import type { CopyOffer } from '../../../src/state/backup/second-copy';
import { createLawNews } from '../../../src/state/law-news';
import { createStorageNotices } from '../../../src/state/storage-notices';
import { createTabClashes } from '../../../src/state/tab-clashes';
import { createNoticeBoard } from '../../../src/store/notice-board';
import type { Clash } from '../../../src/store/tabs/elsewhere';
import { NewsBar } from '../../../src/ui/NewsBar';
import { NewsLines } from '../../../src/ui/NewsLines';

afterEach(cleanup);

function setUp() {
  const applyUpdate = signal<(() => void) | null>(null);
  const board = createNoticeBoard();
  const storage = createStorageNotices({
    store: { onNotice: board.onNotice, saveUnsaved: async () => void done.push('retry') },
    flush: async () => {},
  });
  const offer = signal<CopyOffer | null>(null);
  const hasNoRoom = signal(false);
  let clash = (_news: Clash) => {};
  const tabs = createTabClashes({
    onElsewhere(listener) {
      clash = listener;
      return () => {};
    },
    answerElsewhere: (_store, id, isWanted) => void done.push(`${id} ${isWanted}`),
  });
  const alteredFile = signal<string | null>(null);
  const law = signal(MODEL_VERSION);
  const hasReadings = signal(false);
  const setLaw = (version: number) => {
    law.value = version;
  };
  const done: string[] = [];
  const does = (what: string) => () => void done.push(what);
  const news = {
    applyUpdate,
    isReadyOffline: signal(false),
    alteredFile,
    law: createLawNews({ law, setLaw }, hasReadings),
    storage,
    copy: signal({
      offer,
      hasNoRoom,
      take: async () => void done.push('take'),
      giveUp: does('give up'),
    }),
    tabs,
    nowMs: () => new Date(2026, 5, 1).getTime(),
    reload: does('reload'),
    openBackup: does('open backup'),
  };
  const lines = { here: signal(NewsLines), isAway: signal(false), fetch: async () => NewsLines };
  render(<NewsBar news={news} lines={lines} />);
  return { applyUpdate, clash, alteredFile, board, offer, hasNoRoom, law, hasReadings, done };
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

  it('tell of trouble with the storage, and what to do about it', async () => {
    const { board, done } = setUp();
    board.raise('full', ['attempts']);
    board.raise('outdated');
    await screen.findByText(/is full\. Not kept yet: a reading\./);
    for (const name of ['Try again', 'Backup', 'Reload']) {
      fireEvent.click(screen.getByRole('button', { name }));
    }
    await expect.poll(() => done.toSorted()).toEqual(['open backup', 'reload', 'retry']);
  });

  it('say that what was not kept is kept now, in its place, until that is seen', async () => {
    const { board } = setUp();
    board.raise('full', ['attempts']);
    const before = await screen.findByRole('button', { name: 'Try again' });
    // It was saved by itself, as a finger was on its way to the button.
    board.lower('full');
    await screen.findByText('What was not kept yet is kept now.');
    expect(before.isConnected).toBe(false);
    fireEvent.click(screen.getByRole('button', { name: 'OK' }));
    await expect.poll(() => screen.getByRole('status').textContent).toBe('');
  });

  it('tell what two tabs did at once, and ask about what was deleted', async () => {
    const { clash, done } = setUp();
    const gone = { kind: 'gone', store: 'cues', id: 'mine', name: 'My cue', copyName: '' } as const;
    const both = { kind: 'both', store: 'attempts', id: 'r', name: '', copyName: '' } as const;
    clash(gone);
    clash(both);
    await screen.findByText(/My cue was deleted in another tab\. Bring it back as changed here\?/);
    screen.getByText(/A reading was changed in another tab too\..* struck out\./);
    for (const name of ['Bring it back', 'Let it go', 'OK']) {
      fireEvent.click(screen.getByRole('button', { name }));
    }
    expect(done).toEqual(['mine true', 'mine false']);
    await expect.poll(() => screen.queryByText(/A reading was changed/)).toBeNull();
  });

  it('say once that the laws have changed, and what of the answers that moves', async () => {
    const { law, hasReadings } = setUp();
    law.value = 1;
    await screen.findByText(
      /^Cushions now give back less of a hard shot\. Where balls rest or fall may.* Chances are now told/,
    );
    hasReadings.value = true;
    await screen.findByText(/^Cushions now.*with your readings aims too, may.* Chances are now/);
    law.value = 2;
    await screen.findByText(
      /^Chances are now told for players of your own.*aims may have moved\.$/,
    );
    fireEvent.click(screen.getByRole('button', { name: 'OK' }));
    await expect.poll(() => screen.getByRole('status').textContent).toBe('');
    expect(law.value).toBe(MODEL_VERSION);
  });

  it('name the file that a network alters, for as long as it does', async () => {
    const { alteredFile } = setUp();
    alteredFile.value = 'index.html';
    await screen.findByText(/Not ready offline: the network, or the host, alters index.html/);
    alteredFile.value = null;
    await expect.poll(() => screen.getByRole('status').textContent).toBe('');
  });

  it('offer the copy of what is gone, which can be looked at or given up', async () => {
    const { offer, done } = setUp();
    offer.value = { kind: 'lost', savedAtMs: new Date(2026, 2, 3).getTime() };
    await screen.findByText(/lost what was kept.*of 3 Mar is here/);
    fireEvent.click(screen.getByRole('button', { name: 'Bring it back…' }));
    fireEvent.click(screen.getByRole('button', { name: 'No' }));
    expect(done).toEqual(['open backup', 'take', 'give up']);
  });

  it('offer the copy of what does not open', async () => {
    const { offer, done } = setUp();
    offer.value = { kind: 'shut', savedAtMs: new Date(2025, 2, 3).getTime() };
    await screen.findByText(/of 3 Mar 2025 is here/);
    fireEvent.click(screen.getByRole('button', { name: 'Use it' }));
    expect(done).toEqual(['take']);
  });

  it('say that there is no room for a second copy, until it was looked at', async () => {
    const { hasNoRoom, done } = setUp();
    hasNoRoom.value = true;
    await screen.findByText(/no room for a second copy/);
    fireEvent.click(screen.getByRole('button', { name: 'Backup' }));
    expect(done).toEqual(['open backup']);
    await expect.poll(() => screen.getByRole('status').textContent).toBe('');
  });
});
