import type { RowCounts } from '../../state/backup/backup-file';
import type { FileFault, Incoming } from '../../state/backup/bringing-in';
import type { ExchangeFailure } from '../../state/backup/exchange';
import type { MendedField } from '../../state/backup/mended-field';
import type { SaveOutcome } from '../../state/backup/saving-out';
import type { LastExchange } from '../../state/backup/undoing';
import type { ContentStore } from '../../store/contents';
import type { StoreChanges } from '../../store/store-port';
import { dayWords } from '../../units/ago-words';
import { failureWords } from '../../words/failure-words';
import {
  backupFaultWords,
  STORE_NOUNS,
  TOLD_STORES,
  TOO_MANY_WORDS,
} from '../../words/store-words';
import { capital } from '../measure/knowledge-words';
import { FACES } from '../measure/trials/faces';

/** What a backup holds: "4 cues, 3 cloths, 3 ball sets, 4 tables, your shot and settings." */
export function contentWords(counts: RowCounts): string {
  const told = TOLD_STORES.filter((store) => counts[store] > 0).map((store) => {
    const { one, more } = STORE_NOUNS[store];
    return store === 'desk' ? one : `${counts[store]} ${counts[store] === 1 ? one : more}`;
  });
  return `${told.join(', ')}.`;
}

/** What became of a backup, in one line. */
export function savedWords(outcome: SaveOutcome): string {
  switch (outcome.kind) {
    case 'shared':
      return `Handed over as ${outcome.name}.`;
    case 'downloaded':
      return `Saved as ${outcome.name}, where this browser keeps its downloads.`;
    case 'cancelled':
      return 'Not saved: nothing was picked to take it.';
    case 'again':
      return 'Not saved yet: the browser wants one more tap.';
    case 'failed':
      return `Not saved. ${failureWords(outcome.reason)}`;
  }
}

/** How far a file has come, in one line. */
export function incomingWords(incoming: Incoming, nowMs: number): string {
  switch (incoming.kind) {
    case 'none':
      return '';
    case 'reading':
      return `Looking into ${incoming.fileName}…`;
    case 'working':
      return `Bringing in ${incoming.fileName}…`;
    case 'refused': {
      const where = incoming.line === null ? '' : `Line ${incoming.line}: `;
      return `${incoming.fileName} is not brought in. ${where}${fileFaultWords(incoming.fault)} Nothing was changed.`;
    }
    case 'planned': {
      const { fileName, savedAtMs, plan, problem } = incoming;
      if (problem !== null) return `Not brought in. ${exchangeFailureWords(problem)}`;
      const so = changesNothing(plan.changes)
        ? 'Nothing would change: all of it is here already.'
        : 'This is what it would do.';
      return `${fileName}, saved on ${dayWords(savedAtMs, nowMs)}, is whole. ${so}`;
    }
  }
}

/** Why a file is not looked into. */
function fileFaultWords(fault: FileFault): string {
  switch (fault.reason) {
    case 'not-opened':
      return 'This file cannot be read from where it lies: copy it to this device first.';
    case 'newer-open':
    case 'not-read':
      return failureWords(fault.reason);
    default:
      return backupFaultWords(fault);
  }
}

/** Why what is kept was not exchanged for something else. */
export function exchangeFailureWords(reason: ExchangeFailure | 'too-many'): string {
  if (reason === 'too-many') return TOO_MANY_WORDS;
  if (reason !== 'changed-meanwhile') return failureWords(reason);
  return 'What is kept here has changed meanwhile: look again.';
}

const FATES = ['added', 'changed', 'removed', 'left'] as const satisfies (keyof StoreChanges)[];
const FATE_WORDS: Readonly<Record<keyof StoreChanges, string>> = {
  added: 'added',
  changed: 'changed',
  removed: 'removed',
  left: 'left as before',
};

/** What would become of one kind: "1 added, 4 left as before". */
export function changeWords(kind: ContentStore, changes: StoreChanges): string {
  const fates = FATES.filter((fate) => changes[fate].length > 0);
  return fates
    .map((fate) => `${kind === 'desk' ? '' : `${changes[fate].length} `}${FATE_WORDS[fate]}`)
    .join(', ');
}

/** Whose names they are, a line for each fate: "Added: My cue, Line (2)." */
export function nameLines(kind: ContentStore, changes: StoreChanges): readonly string[] {
  return FATES.filter((fate) => changes[fate].length > 0).map((fate) => {
    const words = FATE_WORDS[fate];
    return `${capital(words)}: ${counted(changes[fate].map((name) => nameWords(kind, name)))}.`;
  });
}

/** Whether it would leave everything as it is. */
export function changesNothing(changes: Readonly<Record<ContentStore, StoreChanges>>): boolean {
  return TOLD_STORES.every((kind) => {
    const { added, changed, removed } = changes[kind];
    return added.length + changed.length + removed.length === 0;
  });
}

/** "House cue: Tip diameter was 60 mm, is 15 mm now." */
export function mendedWords({ store, name, label, was, now }: MendedField): string {
  const [head = label] = label.split('.');
  return `${nameWords(store, name)}: ${FIELD_WORDS[head] ?? label} was ${was}, is ${now} now.`;
}

/** When all was last exchanged, and for what. */
export function exchangeWords({ atMs, wasUndoing }: LastExchange, nowMs: number): string {
  const at = new Date(atMs);
  const clock = [at.getHours(), at.getMinutes()].map((part) => `${part}`.padStart(2, '0'));
  const when = `on ${dayWords(atMs, nowMs)} at ${clock.join(':')}`;
  return wasUndoing ? `Bringing a backup in was undone ${when}.` : `Brought in a backup ${when}.`;
}

/** What may have to be mended besides the numbers of a record. */
const FIELD_WORDS: Readonly<Record<string, string>> = {
  name: 'its name',
  origin: 'where its numbers come from',
  changes: 'what was changed of it',
  like: 'what it starts like',
  startedAtMs: 'its time',
  modelVersion: 'its version',
  readings: 'a reading',
  butt: 'the height of the butt',
  stepsDone: 'the steps done',
  typed: 'what was typed',
  isStruckOut: 'struck out or not',
  lengthM: 'the length of its table',
  widthM: 'the width of its table',
  balls: 'its balls',
  goal: 'what to play',
  zone: 'where the cue ball should rest',
  changedAtMs: 'when it was changed',
  shot: 'the shot',
  heldShot: 'the held shot',
  headingRad: 'the way of the shot',
  recentShots: 'the recent shots',
  choice: 'what is in play',
  preferences: 'how figures are shown',
  pocket: 'the pocket',
  playerId: 'who plays',
  madeOf10: 'how many of ten',
  wasAsked: 'asked or not',
  createdAtMs: 'when it was made',
  atMs: 'its time',
  position: 'where it lay',
  scratched: 'scratched or not',
  cueBall: 'where the cue ball stopped',
  asMeant: 'struck as meant or not',
  testId: 'its test',
  drill: 'what it practised',
};

const TRIAL_LABELS = Object.fromEntries(
  Object.entries(FACES).map(([name, { label }]) => [name, label]),
);

/** A name as a person knows it: trials and kinds go by theirs, records by their own. */
function nameWords(kind: ContentStore, name: string): string {
  if (kind === 'attempts') return ownOr(TRIAL_LABELS, name);
  if (kind !== 'desk' && kind !== 'set-aside') return name;
  const store = TOLD_STORES.find((known) => known === name);
  return store ? STORE_NOUNS[store].all : name;
}

function ownOr(labels: Readonly<Record<string, string>>, name: string): string {
  return Object.hasOwn(labels, name) ? (labels[name] ?? name) : name;
}

/** Each once, in the order in which they came, and how often where that is more. */
function counted(names: readonly string[]): string {
  const times = new Map<string, number>();
  for (const name of names) times.set(name, (times.get(name) ?? 0) + 1);
  return [...times].map(([name, count]) => (count > 1 ? `${name} (${count})` : name)).join(', ');
}
