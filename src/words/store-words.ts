import type { BackupFault } from '../store/backup/backup-format';
import type { ContentStore, StoreName } from '../store/contents';
import type { StoreNotice, StoreNoticeKind } from '../store/store-port';
import type { Clash } from '../store/tabs/elsewhere';
import { NO_MORE } from './failure-words';

/** What the rows of a store are called. */
interface Nouns {
  /** All of them, as a heading. */
  readonly all: string;
  readonly one: string;
  readonly more: string;
  /** A row that has no name, or none that is known. */
  readonly nameless: string;
  /** A row that is not kept yet. */
  readonly unsaved: string;
}

const KIT = { nameless: 'Part of your kit', unsaved: 'your kit' } as const;

/** By store, in the order in which they are told. */
export const STORE_NOUNS: { readonly [S in StoreName]: Nouns } & {
  readonly 'set-aside': Pick<Nouns, 'all' | 'one' | 'more'>;
} = {
  cues: { all: 'Cues', one: 'cue', more: 'cues', ...KIT },
  cloths: { all: 'Cloths', one: 'cloth', more: 'cloths', ...KIT },
  balls: { all: 'Ball sets', one: 'ball set', more: 'ball sets', ...KIT },
  tables: { all: 'Tables', one: 'table', more: 'tables', ...KIT },
  attempts: {
    all: 'Shots of trials',
    one: 'shot of a trial',
    more: 'shots of trials',
    nameless: 'A reading',
    unsaved: 'a reading',
  },
  positions: {
    all: 'Positions',
    one: 'position',
    more: 'positions',
    nameless: 'A position',
    unsaved: 'a position',
  },
  players: {
    all: 'Players',
    one: 'player',
    more: 'players',
    nameless: 'A player',
    unsaved: 'a player',
  },
  played: {
    all: 'Shots played',
    one: 'shot played',
    more: 'shots played',
    nameless: 'A shot played',
    unsaved: 'a shot played',
  },
  desk: {
    all: 'Your shot and settings',
    one: 'your shot and settings',
    more: 'your shot and settings',
    nameless: 'Your shot or a setting',
    unsaved: 'your shot',
  },
  'set-aside': {
    all: 'Set aside as it was found',
    one: 'damaged entry as it was found',
    more: 'damaged entries as they were found',
  },
};

/** Every store, in the same order. */
export const TOLD_STORES = Object.keys(STORE_NOUNS) as readonly ContentStore[];

const NOTICES: Readonly<Record<StoreNoticeKind, string>> = {
  blocked: 'Another Leeway tab is in the way of an update: close it, then reload.',
  outdated: 'A newer version of Leeway is open: reload this page.',
  deleted:
    'What was kept here was deleted from outside. The next change here keeps all of it again.',
  replaced: 'A backup was brought in in another tab: reload this page.',
  closed: 'The browser closed the storage; it opens again by itself.',
  'not-kept': 'This browser gives no storage here: nothing outlives this visit.',
  'not-opened':
    'What is kept here did not open. Readings wait aside: reload, or close and reopen the browser.',
  full: 'The storage of this browser is full.',
  'write-failed': 'The storage of this browser does not answer.',
  mended: 'Something kept here was damaged. It is set aside as it was found.',
};

/** What is wrong with the storage, and what waits for it: "Not kept yet: a reading, your shot." */
export function noticeWords({ kind, unsaved }: StoreNotice): string {
  if (unsaved.length === 0) return NOTICES[kind];
  const waiting = new Set(unsaved.map((store) => STORE_NOUNS[store].unsaved));
  return `${NOTICES[kind]} Not kept yet: ${[...waiting].join(', ')}.`;
}

/** Said in place of what was not kept yet. */
export const KEPT_SINCE_WORDS = 'What was not kept yet is kept now.';

/** Why a backup that was to be brought in has no room. */
export const TOO_MANY_WORDS = `${NO_MORE} Delete some here first, or replace what is here.`;

/** What is wrong with a file that should be a backup. */
export function backupFaultWords(fault: BackupFault): string {
  switch (fault.reason) {
    case 'too-large':
      return 'This file is too large to be a Leeway backup.';
    case 'not-ours':
      return 'This is no Leeway backup, or its first line is damaged.';
    case 'newer':
      return 'This was written by a newer Leeway: update first.';
    case 'damaged':
      return 'This line is damaged, or not where it was.';
    case 'miscounted':
      return `There should be ${fault.rows} lines of data before this one.`;
    case 'cut-short':
      return 'The file ends here, and should not.';
    case 'not-its-checksum':
      return 'The checksum is not that of this file.';
    case 'no-row':
      return 'This line does not say what it is.';
    case 'repeated':
      return `This is on line ${fault.earlier} already.`;
    case 'too-many':
      return NO_MORE;
    case 'missing':
      return `This file has no ${fault.store} in it.`;
    case 'unreadable':
      return 'This cannot be read.';
  }
}

/** What two tabs did that could not be joined, in words. */
export function clashWords({ kind, store, name, copyName }: Clash): string {
  const what = name || STORE_NOUNS[store].nameless;
  if (kind === 'gone') return `${what} was deleted in another tab. Bring it back as changed here?`;
  if (kind === 'stays') return `${what} was changed in another tab, so it stays.`;
  return `${what} was changed in another tab too. This tab’s stands; ${otherWords(store, copyName)}`;
}

function otherWords(store: StoreName, copyName: string): string {
  if (copyName) return `the other’s is kept as ${copyName}.`;
  if (store === 'attempts') return 'the other’s is kept beside it, struck out.';
  if (store === 'played') return 'the other’s is kept beside it, and nothing is learnt from it.';
  return 'another shot is held, if none was.';
}
