import { describe, expect, it, vi } from 'vitest';
import { type SharePort, shareFile, type TextFile } from '../../../src/sensors/share-file';

const BACKUP: TextFile = {
  name: 'invented.backup.json',
  mediaType: 'application/json',
  text: '{"é": 1}',
};

/** A page with a share sheet for the kinds named. */
function page(kinds: readonly string[], prefersSheet = true) {
  const share = vi.fn<SharePort['share']>(async () => undefined);
  const download = vi.fn<SharePort['download']>();
  const canShare = (files: File[]) => files.every(({ type }) => kinds.includes(type));
  return { prefersSheet, canShare, share, download };
}

const failWith = (name: string) => () => Promise.reject(new DOMException('No', name));

const JSON_AND_TEXT = ['application/json', 'text/plain'];

describe('where the share sheet takes the file', () => {
  it('opens it within the tap, with the file as it is', async () => {
    const port = page(JSON_AND_TEXT);
    const outcome = shareFile(BACKUP, port);
    expect(port.share).toHaveBeenCalledOnce();
    const file = port.share.mock.calls[0]?.[0][0];
    expect([file?.name, file?.type]).toEqual(['invented.backup.json', 'application/json']);
    expect(await file?.text()).toBe('{"é": 1}');
    expect(await outcome).toEqual({ kind: 'shared', name: 'invented.backup.json' });
    expect(port.download).not.toHaveBeenCalled();
  });

  it('says nothing but that the person closed it', async () => {
    const port = page(JSON_AND_TEXT);
    port.share.mockImplementation(failWith('AbortError'));
    expect(await shareFile(BACKUP, port)).toEqual({ kind: 'cancelled' });
    expect(port.download).not.toHaveBeenCalled();
  });

  it('asks for another tap the same way while another sheet is open', async () => {
    const port = page(JSON_AND_TEXT);
    port.share.mockImplementation(failWith('InvalidStateError'));
    expect(await shareFile(BACKUP, port)).toEqual({ kind: 'again', way: 'sheet' });
  });

  it('is never refused for ever: every tap tries the next way, the last is a download', async () => {
    const port = page(JSON_AND_TEXT);
    port.share.mockImplementation(failWith('NotAllowedError'));
    const first = await shareFile(BACKUP, port);
    expect(first).toEqual({ kind: 'again', way: 'sheet-as-text' });
    const second = await shareFile(BACKUP, port, 'sheet-as-text');
    expect(second).toEqual({ kind: 'again', way: 'download' });
    const third = await shareFile(BACKUP, port, 'download');
    expect(third).toEqual({ kind: 'downloaded', name: 'invented.backup.json' });
  });

  it('goes on to the next way after any other failure too', async () => {
    const port = page(['application/json']);
    port.share.mockImplementation(failWith('DataError'));
    expect(await shareFile(BACKUP, port)).toEqual({ kind: 'again', way: 'download' });
  });
});

describe('where the share sheet takes no JSON', () => {
  it.each([
    ['invented.backup.json', 'invented.backup.txt'],
    ['invented', 'invented.txt'],
  ])('shares %s as the plain text %s', async (name, shared) => {
    const port = page(['text/plain']);
    expect(await shareFile({ ...BACKUP, name }, port)).toEqual({ kind: 'shared', name: shared });
    const file = port.share.mock.calls[0]?.[0][0];
    expect([file?.name, file?.type]).toEqual([shared, 'text/plain']);
    expect(await file?.text()).toBe(BACKUP.text);
  });
});

describe('where there is no fitting sheet', () => {
  it.each([
    ['it shares no files', page([])],
    ['a mouse is at hand', page(JSON_AND_TEXT, false)],
  ])('downloads at once: %s', async (_, port) => {
    expect(await shareFile(BACKUP, port)).toEqual({
      kind: 'downloaded',
      name: 'invented.backup.json',
    });
    expect(port.share).not.toHaveBeenCalled();
    const file = port.download.mock.calls[0]?.[0];
    expect([file?.name, file?.type]).toEqual(['invented.backup.json', 'application/json']);
    expect(await file?.text()).toBe(BACKUP.text);
  });
});
