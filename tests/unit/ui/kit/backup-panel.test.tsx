import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { afterEach, describe, expect, it } from 'vitest';
import { BackupPanel } from '../../../../src/ui/kit/BackupPanel';
import { createRouter } from '../../../../src/ui/route';
import { textOf } from '../../../store/backup/import-text';
import { CONTENTS, MY_CUE } from '../../../store/backup/invented-contents';
import {
  type OpenOptions,
  openBackup,
  picked,
  SAVED_AT_MS,
  sheet,
} from '../../state/backup/open-backup';

afterEach(cleanup);

async function openPanel(options: OpenOptions = {}, keeps = true) {
  const opened = await openBackup(options);
  const app = {
    backup: { ...opened.model, keeps },
    nowMs: () => SAVED_AT_MS,
    router: createRouter(window),
  };
  const { container } = render(<BackupPanel app={app} />);
  return { ...opened, container };
}

const press = async (name: string | RegExp) =>
  fireEvent.click(await screen.findByRole('button', { name }));

async function pick(container: Element, file: File): Promise<void> {
  const input = container.querySelector('input');
  if (!input) throw new Error('no way to pick a file');
  Object.defineProperty(input, 'files', { configurable: true, value: [file] });
  fireEvent.change(input);
  await screen.findByText(/is whole|is not brought in/);
}

const LESS = { ...CONTENTS, attempts: [], setAside: [] };

describe('the Backup panel', () => {
  it('tells why to keep a copy, and what is in it', async () => {
    await openPanel();
    expect(screen.getByText(/A phone may clear what a site keeps/)).toBeTruthy();
    await screen.findByText(/^In it: 5 cues, 3 cloths/);
  });

  it('says what became of a backup', async () => {
    await openPanel({ sharing: sheet('AbortError').port });
    await screen.findByText(/^In it/);
    await press('Save a backup');
    await screen.findByText(/^Not saved/);
    await press('Save a backup');
    await screen.findByText('Handed over as leeway-backup-2026-01-05.json.');
  });

  it('shows what a file would do, and brings it in only when told to', async () => {
    const text = await textOf((await openBackup()).store);
    const { container, done } = await openPanel({ contents: LESS });
    await pick(container, picked(text));
    expect(screen.getByText('Shots of trials:').parentElement?.textContent).toContain('2 added');
    expect(screen.getByRole('button', { name: 'Add to it', pressed: true })).toBeTruthy();
    expect(done).not.toContain('reload');
    await press('Bring it in');
    await expect.poll(() => done).toContain('reload');
  });

  it('names what a replacement would remove', async () => {
    const text = await textOf((await openBackup({ contents: LESS })).store);
    const contents = {
      ...LESS,
      cues: [...LESS.cues, { ...MY_CUE, id: 'b', name: 'B' }],
    };
    const { container } = await openPanel({ contents });
    await pick(container, picked(text));
    expect(screen.queryByRole('button', { name: 'Bring it in' })).toBeNull();
    await press('Replace it');
    await screen.findByText('Removed: B.');
    expect(await screen.findByRole('button', { name: 'Bring it in' })).toBeTruthy();
  });

  it('goes back to the way in when a file is left', async () => {
    const text = await textOf((await openBackup()).store);
    const { container } = await openPanel({ contents: LESS });
    await pick(container, picked(text));
    await press('Leave it');
    await expect.poll(() => screen.queryByText(/is whole/)).toBeNull();
    expect(document.activeElement?.textContent).toMatch(/^Bring a backup in/);
  });

  it('tells of a damaged file which line it is', async () => {
    const { container } = await openPanel();
    await pick(container, picked('scribble'));
    expect(screen.getByText(/Line 1: .*Nothing was changed\.$/)).toBeTruthy();
  });

  it('offers to undo what was brought in', async () => {
    const { done } = await openPanel();
    await screen.findByText(/^Brought in a backup on /);
    await press(/Undo$/);
    await expect.poll(() => done).toContain('reload');
  });

  it('takes nothing in where nothing is kept, and says so', async () => {
    await openPanel({}, false);
    expect(screen.queryByRole('button', { name: /^Bring a backup in/ })).toBeNull();
    expect(screen.getByText(/keeps nothing here/)).toBeTruthy();
  });
});
