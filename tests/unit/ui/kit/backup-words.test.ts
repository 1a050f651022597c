import { describe, expect, it } from 'vitest';
import type { ContentStore } from '../../../../src/store/contents';
import type { StoreChanges } from '../../../../src/store/store-port';
import {
  changesNothing,
  changeWords,
  contentWords,
  exchangeWords,
  incomingWords,
  mendedWords,
  nameLines,
  savedWords,
} from '../../../../src/ui/kit/backup-words';
import { TOLD_STORES } from '../../../../src/words/store-words';
import { NO_ROWS } from '../../../store/no-rows';

const NONE: StoreChanges = { added: [], changed: [], removed: [], left: [] };
const NO_CHANGES = Object.fromEntries(TOLD_STORES.map((kind) => [kind, NONE])) as Record<
  ContentStore,
  StoreChanges
>;
const NONE_COUNTED = Object.fromEntries(TOLD_STORES.map((kind) => [kind, 0])) as Record<
  ContentStore,
  number
>;
const AT_MS = new Date(2026, 10, 25, 9, 5).getTime();

describe('the words for what is in a backup', () => {
  it('count each kind, one or more of it, and leave out what there is none of', () => {
    expect(contentWords({ ...NONE_COUNTED, cues: 1, cloths: 3, desk: 1 })).toBe(
      '1 cue, 3 cloths, your shot and settings.',
    );
    expect(contentWords({ ...NONE_COUNTED, attempts: 2, positions: 3, 'set-aside': 1 })).toBe(
      '2 shots of trials, 3 positions, 1 damaged entry as it was found.',
    );
  });
});

describe('the words for what became of it', () => {
  it.each([
    [{ kind: 'shared', name: 'a.json' } as const, /^Handed over as a\.json\.$/],
    [{ kind: 'downloaded', name: 'a.json' } as const, /^Saved as a\.json, /],
    [{ kind: 'cancelled' } as const, /^Not saved: /],
    [{ kind: 'again', way: 'download' } as const, /^Not saved yet: .* one more tap\.$/],
    [{ kind: 'failed', reason: 'not-read' } as const, /^Not saved\. What is kept .*\.$/],
  ])('are one line of %o', (outcome, words) => {
    expect(savedWords(outcome)).toMatch(words);
  });
});

describe('the words for a file', () => {
  const fault = { reason: 'unreadable' } as const;
  const refused = { kind: 'refused', fileName: 'a.json', line: 7, fault } as const;

  it('name the line that is wrong, where there is one', () => {
    expect(incomingWords(refused, AT_MS)).toBe(
      'a.json is not brought in. Line 7: This cannot be read. Nothing was changed.',
    );
    expect(incomingWords({ ...refused, line: null }, AT_MS)).not.toContain('Line');
  });

  it('say what stands in the way of looking into it', () => {
    const words = (reason: 'not-opened' | 'not-read' | 'newer-open') =>
      incomingWords({ ...refused, line: null, fault: { reason } }, AT_MS);
    expect(words('not-opened')).toContain('copy it to this device first');
    expect(words('not-read')).toContain('What is kept could not be read.');
    expect(words('newer-open')).toContain('reload first');
  });

  it('say from which day it is, and whether it would do anything', () => {
    const changes = { ...NO_CHANGES, cues: { ...NONE, added: ['Mine'] } };
    const toPut = { ...NO_ROWS, setAside: [], desk: null };
    const plan = { mode: 'merge', changes, repairs: [], toPut } as const;
    const told = { kind: 'planned', fileName: 'a.json', savedAtMs: AT_MS } as const;
    const planned = { ...told, plan, isPart: false, isBlankHere: false };
    const words = (over: object) =>
      incomingWords({ ...planned, mended: [], problem: null, canBeDone: true, ...over }, AT_MS);
    expect(words({})).toBe('a.json, saved on 25 Nov, is whole. This is what it would do.');
    expect(words({ plan: { ...plan, changes: NO_CHANGES } })).toContain('Nothing would change');
    expect(words({ problem: 'full' })).toMatch(/^Not brought in\. No room left: .*\.$/);
    expect(words({ problem: 'changed-meanwhile' })).toContain('look again');
    expect(words({ problem: 'too-many' })).toMatch(/5,000 of a kind at most.*Delete some here/);
  });

  it('say what is being done to it', () => {
    expect(incomingWords({ kind: 'none' }, AT_MS)).toBe('');
    expect(incomingWords({ kind: 'reading', fileName: 'a.json' }, AT_MS)).toContain('Looking');
    expect(incomingWords({ kind: 'working', fileName: 'a.json' }, AT_MS)).toContain('Bringing in');
  });
});

describe('the words for a plan', () => {
  const changes = { added: ['Mine'], changed: [], removed: ['Old', 'Older'], left: ['House cue'] };

  it('count what becomes of each kind', () => {
    expect(changeWords('cues', changes)).toBe('1 added, 2 removed, 1 left as before');
    expect(changeWords('cues', NONE)).toBe('');
  });

  it('do not count the shot and settings, of which there is one', () => {
    expect(changeWords('desk', { ...NONE, changed: ['desk'] })).toBe('changed');
    expect(changeWords('desk', { ...NONE, left: ['desk'] })).toBe('left as before');
  });

  it('name them, trials by their labels and as often as they are', () => {
    expect(nameLines('cues', changes)).toEqual([
      'Added: Mine.',
      'Removed: Old, Older.',
      'Left as before: House cue.',
    ]);
    expect(nameLines('attempts', { ...NONE, added: ['curve', 'line', 'curve'] })).toEqual([
      'Added: Curve (2), Line.',
    ]);
    expect(nameLines('set-aside', { ...NONE, added: ['cues'] })).toEqual(['Added: Cues.']);
  });

  it('leave a cue its name, though it be that of a trial', () => {
    expect(nameLines('cues', { ...NONE, added: ['curve'] })).toEqual(['Added: curve.']);
  });

  it('tell a plan that changes nothing from one that does', () => {
    expect(changesNothing({ ...NO_CHANGES, cues: { ...NONE, left: ['House cue'] } })).toBe(true);
    for (const fate of ['added', 'changed', 'removed'] as const) {
      expect(changesNothing({ ...NO_CHANGES, tables: { ...NONE, [fate]: ['Mine'] } })).toBe(false);
    }
  });

  it('tell what was mended by its label, or in words where it has none', () => {
    const field = {
      store: 'cues',
      name: 'Mine',
      label: 'Tip diameter',
      was: '60 mm',
      now: '15 mm',
    };
    expect(mendedWords({ ...field, store: 'cues' })).toBe(
      'Mine: Tip diameter was 60 mm, is 15 mm now.',
    );
    const reading = { ...field, store: 'attempts', name: 'line', label: 'readings.timeS' } as const;
    expect(mendedWords(reading)).toMatch(/^Line: a reading was /);
  });
});

it('says when all was exchanged, by the reader’s own calendar and clock', () => {
  expect(exchangeWords({ atMs: AT_MS, wasUndoing: false }, AT_MS)).toBe(
    'Brought in a backup on 25 Nov at 09:05.',
  );
  expect(exchangeWords({ atMs: AT_MS, wasUndoing: true }, AT_MS)).toBe(
    'Bringing a backup in was undone on 25 Nov at 09:05.',
  );
});
