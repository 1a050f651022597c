import { expect, it, vi } from 'vitest';
import { openFile } from '../../../src/sensors/open-file';

it('reads the text of a picked file', async () => {
  expect(await openFile(new File(['{"é": 1}'], 'invented.json'))).toEqual({
    kind: 'read',
    text: '{"é": 1}',
  });
});

it('does not so much as begin to read one that is too large', async () => {
  const text = vi.fn(async () => 'a film');
  expect(await openFile({ size: 101, text }, 100)).toEqual({
    kind: 'too-large',
    sizeBytes: 101,
    mostBytes: 100,
  });
  expect(text).not.toHaveBeenCalled();
  expect(await openFile({ size: 100, text }, 100)).toEqual({ kind: 'read', text: 'a film' });
});

it('says that a file cannot be read', async () => {
  const text = () => Promise.reject(new DOMException('Gone', 'NotReadableError'));
  expect(await openFile({ size: 5, text })).toEqual({ kind: 'unreadable' });
});
