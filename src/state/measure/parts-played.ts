import type { Parts } from '../../engine/fit/fit-question';
import type { TrialBed } from '../../engine/fit/trials/trial';
import type { Attempt } from '../../store/attempt';
import type { ShelfContents } from '../../store/contents';
import { PART_OF } from '../../store/kit-fields';
import {
  type Choice,
  type Named,
  SHELF_NAMES,
  type ShelfName,
  type Shelves,
} from '../../store/records';

/** A cue, a cloth, a ball set and a table. */
export type Records = { readonly [S in ShelfName]: Shelves[S] };

/** Records that something was played with, each in one of its eras. */
export interface Played {
  readonly records: Records;
  /** How many changes each had behind it. */
  readonly eras: { readonly [S in ShelfName]: number };
  /** Names of the records in those eras, for the fit. */
  readonly parts: Parts;
}

/** An attempt and what it was played with. */
export interface PlayedAttempt extends Played {
  readonly attempt: Attempt;
}

/** How many changes a record had behind it at a time: each parts what was read before from after. */
function eraAt({ changes }: Named, timeMs: number): number {
  return changes.filter(({ atMs }) => atMs <= timeMs).length;
}

/** What the fit calls a record in one of its eras; no two share a name. */
export function partName(recordId: string, era: number): string {
  return `${recordId}#${era}`;
}

/** @param timeMs left out: the records as they are now, with every change behind them */
export function playedWith(records: Records, timeMs = Number.POSITIVE_INFINITY): Played {
  const era = (shelf: ShelfName) => eraAt(records[shelf], timeMs);
  const name = (shelf: ShelfName) => partName(records[shelf].id, era(shelf));
  return {
    records,
    eras: { cues: era('cues'), cloths: era('cloths'), balls: era('balls'), tables: era('tables') },
    parts: {
      cue: name('cues'),
      cloth: name('cloths'),
      balls: name('balls'),
      table: name('tables'),
    },
  };
}

/** The records of each shelf by their ids. */
export type ShelfIndex = { readonly [S in ShelfName]: ReadonlyMap<string, Shelves[S]> };

/** Made once for many attempts: looking through a shelf for each takes long where both are. */
export function indexShelves({ cues, cloths, balls, tables }: ShelfContents): ShelfIndex {
  const byId = <T extends Named>(records: readonly T[]) =>
    new Map(records.map((record) => [record.id, record]));
  return { cues: byId(cues), cloths: byId(cloths), balls: byId(balls), tables: byId(tables) };
}

/** What an attempt was played with; null where a record of it is gone from its shelf. */
export function playedAttempt(attempt: Attempt, shelves: ShelfIndex): PlayedAttempt | null {
  const records = recordsOf(attempt.choice, shelves);
  return records && { attempt, ...playedWith(records, attempt.startedAtMs) };
}

function recordsOf(choice: Choice, shelves: ShelfIndex): Records | null {
  const find = <S extends ShelfName>(shelf: S): Shelves[S] | undefined =>
    shelves[shelf].get(choice[shelf]);
  const [cues, cloths, balls, tables] = [
    find('cues'),
    find('cloths'),
    find('balls'),
    find('tables'),
  ];
  return cues && cloths && balls && tables ? { cues, cloths, balls, tables } : null;
}

/** Whether two share a cue, a cloth, a ball set or a table in the same era of it. */
export function sharePart(one: Played, other: Played): boolean {
  return SHELF_NAMES.some((shelf) => one.parts[PART_OF[shelf]] === other.parts[PART_OF[shelf]]);
}

/** The table in play, with the balls in play on it. */
export function trialBedOf({ tables, balls }: Pick<Records, 'tables' | 'balls'>): TrialBed {
  return { lengthM: tables.lengthM, ballRadiusM: balls.ballRadiusM };
}
