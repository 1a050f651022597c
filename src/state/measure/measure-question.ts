import { computed, type ReadonlySignal } from '@preact/signals';
import type { StrokeProfile } from '../../engine/room/stroke-profile';
import type { Attempt } from '../../store/attempt';
import type { ShelfContents } from '../../store/contents';
import { type Named, SHELF_NAMES } from '../../store/records';
import { isSame } from '../../store/same-value';
import { progressOf } from './attempt-progress';
import { indexShelves, type Played, type PlayedAttempt, playedAttempt } from './parts-played';

/** All that the report depends on, but the shots whose aims it should serve. */
export interface MeasureQuestion {
  /** The kit in play. */
  readonly inPlay: Played;
  readonly shelves: ShelfContents;
  /** All that count, of whatever kit. */
  readonly attempts: readonly PlayedAttempt[];
  readonly profile: StrokeProfile;
  /** All that matters of it, a row a line: the same for the same question. */
  readonly lines: readonly string[];
}

export interface QuestionPorts {
  readonly inPlay: ReadonlySignal<Played>;
  readonly shelves: ReadonlySignal<ShelfContents>;
  readonly attempts: ReadonlySignal<readonly Attempt[]>;
  /** How the strokes of whoever plays scatter, roughly. */
  readonly profile: ReadonlySignal<StrokeProfile>;
}

/** The present question; it stays the very same while nothing that matters changes. */
export function presentQuestion(ports: QuestionPorts): ReadonlySignal<MeasureQuestion> {
  const lineOf = once((record: Named) => JSON.stringify(record, withoutNames));
  const lineOfRead = once((read: Attempt) => (counts(read) ? [JSON.stringify(read)] : []));
  let last: MeasureQuestion | null = null;
  return computed(() => {
    const [inPlay, shelves] = [ports.inPlay.value, ports.shelves.value];
    const [all, profile] = [ports.attempts.value, ports.profile.value];
    const records = SHELF_NAMES.flatMap((shelf) => [inPlay.records[shelf], ...shelves[shelf]]);
    const lines = [JSON.stringify(profile), ...records.map(lineOf), ...all.flatMap(lineOfRead)];
    if (last === null || !isSame(lines, last.lines)) {
      const index = indexShelves(shelves);
      const counting = all.filter((attempt) => lineOfRead(attempt).length > 0);
      const attempts = counting.flatMap((attempt) => playedAttempt(attempt, index) ?? []);
      last = { inPlay, shelves, attempts, profile, lines };
    }
    return last;
  });
}

/** Works something out of each row once: a row never changes, another takes its place. */
function once<Row extends object, R>(work: (row: Row) => R): (row: Row) => R {
  const known = new WeakMap<Row, R>();
  return (row) => {
    const found = known.get(row) ?? work(row);
    known.set(row, found);
    return found;
  };
}

/** Whether there are no readings to tell anything. */
export function isUnread({ attempts }: MeasureQuestion): boolean {
  return attempts.length === 0;
}

/** Whether an attempt tells anything: it is finished, read and not struck out. */
function counts(attempt: Attempt): boolean {
  const { isStruckOut, readings } = attempt;
  return !isStruckOut && progressOf(attempt).now === null && Object.keys(readings).length > 0;
}

/** What a record is called tells nothing of it. */
function withoutNames(key: string, value: unknown): unknown {
  return key === 'name' || key === 'origin' ? undefined : value;
}
