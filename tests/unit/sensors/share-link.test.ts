import { describe, expect, it, vi } from 'vitest';
import { shareLink } from '../../../src/sensors/share-link';

const URL = 'https://example.org/#kit/link/x';
const named = (name: string) => Object.assign(new Error(name), { name });

describe('a link is handed out', () => {
  it('by the sheet where there is one', async () => {
    const page = { share: vi.fn(async () => {}), clipboard: { writeText: vi.fn(async () => {}) } };
    expect(await shareLink(URL, page)).toBe('shared');
    expect(page.share).toHaveBeenCalledWith({ url: URL });
    expect(page.clipboard.writeText).not.toHaveBeenCalled();
  });

  it('to nobody else where the person closed the sheet', async () => {
    const share = () => Promise.reject(named('AbortError'));
    const clipboard = { writeText: vi.fn(async () => {}) };
    expect(await shareLink(URL, { share, clipboard })).toBe('shared');
    expect(clipboard.writeText).not.toHaveBeenCalled();
  });

  it('by the clipboard where the sheet is refused, or there is none', async () => {
    const clipboard = { writeText: vi.fn(async () => {}) };
    const share = () => Promise.reject(named('NotAllowedError'));
    expect(await shareLink(URL, { share, clipboard })).toBe('copied');
    expect(await shareLink(URL, { clipboard })).toBe('copied');
    expect(clipboard.writeText).toHaveBeenCalledTimes(2);
  });

  it('as text to select where neither takes it', async () => {
    const clipboard = { writeText: () => Promise.reject(named('NotAllowedError')) };
    expect(await shareLink(URL, { clipboard })).toBe('refused');
    expect(await shareLink(URL, {})).toBe('refused');
  });
});
