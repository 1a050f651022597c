import { describe, expect, it } from 'vitest';
import {
  copyWords,
  formerWords,
  roomWords,
  setAsideLines,
} from '../../../../src/ui/kit/storage-words';
import { CONTENTS } from '../../../store/backup/invented-contents';

const NOW_MS = new Date(2026, 5, 1).getTime();
const MARCH_MS = new Date(2026, 2, 3).getTime();

describe('the room there is', () => {
  const told = { usedBytes: 1_240_000, mostBytes: 2_000_000_000 };
  it.each([
    [true, 'Short of room, this browser will not clear what is kept here.'],
    [false, 'Short of room, this browser may clear what is kept here.'],
    [null, 'Short of room, this browser does not say if it may clear what is kept here.'],
  ])('is told with whether it is promised: %s', (isPromised, words) => {
    expect(roomWords({ isPromised, ...told })).toBe(`${words} 1.2 of 2000 MB are taken.`);
    expect(roomWords({ isPromised, usedBytes: null, mostBytes: null })).toBe(words);
  });
});

it('tell of the second copy with what it has no room for', () => {
  expect(copyWords({ atMs: MARCH_MS, leftOut: 0 }, NOW_MS)).toMatch(/made 3 Mar\.$/);
  expect(copyWords({ atMs: MARCH_MS, leftOut: 7 }, NOW_MS)).toMatch(
    /no room for 7 older entries\.$/,
  );
});

it('count what is set aside by where it lay and why', () => {
  const [cue, desk] = CONTENTS.setAside;
  if (!cue || !desk) throw new Error('nothing set aside');
  expect(setAsideLines([cue, desk, cue])).toEqual([
    'Cues, mended since: 2',
    'Your shot and settings, unreadable: 1',
  ]);
});

it('name a copy from before by its occasion and day', () => {
  const copy = { atMs: MARCH_MS, contents: CONTENTS };
  expect(formerWords({ ...copy, reason: 'upgrade' }, NOW_MS)).toBe('before an update, 3 Mar');
  expect(formerWords({ ...copy, reason: 'import' }, NOW_MS)).toBe('before an import, 3 Mar');
});
