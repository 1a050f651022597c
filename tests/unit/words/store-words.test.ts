import { describe, expect, it } from 'vitest';
import { MOST_OF_A_KIND } from '../../../src/store/most-of-a-kind';
import type { StoreNoticeKind } from '../../../src/store/store-port';
import { CONTENT_STORES } from '../../../src/store/stores';
import { CROWDED_WORDS, failureWords } from '../../../src/words/failure-words';
import {
  backupFaultWords,
  noticeWords,
  TOLD_STORES,
  TOO_MANY_WORDS,
} from '../../../src/words/store-words';

it('tell of every store in the order in which the app keeps them', () => {
  expect(TOLD_STORES).toEqual(CONTENT_STORES);
});

describe('a notice', () => {
  const KINDS: readonly StoreNoticeKind[] = [
    'blocked',
    'outdated',
    'deleted',
    'replaced',
    'closed',
    'not-kept',
    'not-opened',
    'full',
    'write-failed',
    'mended',
  ];
  it.each(KINDS)('is told in one plain line: %s', (kind) => {
    expect(noticeWords({ kind, unsaved: [] })).toMatch(/^[A-Z][^\n]{10,95}\.$/);
  });

  it('names what is not kept yet, each once', () => {
    const unsaved = ['cues', 'attempts', 'tables', 'positions', 'desk', 'attempts'] as const;
    expect(noticeWords({ kind: 'full', unsaved })).toBe(
      'The storage of this browser is full. Not kept yet: your kit, a reading, a position, your shot.',
    );
  });
});

describe('a reason', () => {
  it.each([
    'full',
    'outdated',
    'replaced',
    'unavailable',
    'newer-open',
    'not-read',
    'last-on-shelf',
    'nothing-kept',
  ] as const)('of the store is one plain line: %s', (reason) => {
    expect(failureWords(reason)).toMatch(/^[A-Z][^\n]{10,70}\.$/);
  });

  it('not to keep more names how many are kept', () => {
    const most = MOST_OF_A_KIND.toLocaleString('en');
    for (const words of [CROWDED_WORDS, TOO_MANY_WORDS]) {
      expect(words).toMatch(new RegExp(`${most} of a kind at most.*each start reads all.*Delete`));
    }
  });

  it('against a file tells the figures that go with it', () => {
    expect(backupFaultWords({ reason: 'miscounted', rows: 12 })).toContain('12 lines of data');
    expect(backupFaultWords({ reason: 'repeated', earlier: 7 })).toContain('line 7');
    expect(backupFaultWords({ reason: 'missing', store: 'cues' })).toContain('no cues in it');
    expect(backupFaultWords({ reason: 'too-many' })).toContain('5,000 of a kind');
  });

  it.each([
    'too-large',
    'not-ours',
    'newer',
    'damaged',
    'cut-short',
    'not-its-checksum',
    'no-row',
    'unreadable',
  ] as const)('against a file is one plain line: %s', (reason) => {
    expect(backupFaultWords({ reason })).toMatch(/^[A-Z][^\n]{10,70}\.$/);
  });
});
