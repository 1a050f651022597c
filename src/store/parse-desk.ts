import type { Shot } from '../engine/aim/shot';
import { DEFAULT_CHOICE, DEFAULT_DESK, DEFAULT_POCKET } from './default-desk';
import {
  isPlainObject,
  type Mend,
  mendAbsent,
  mendLine,
  mendNumber,
  mendObject,
  mendWord,
} from './mend';
import { mendPreferences } from './parse-preferences';
import { mendShot } from './parse-shot';
import { POCKET_RANGES } from './pocket-ranges';
import type { Choice, Desk, Pocket, ShelfName } from './records';
import { SHELF_NAMES } from './shelf-names';
import type { Repair, ShelfContents } from './store-port';

/** Ids are short; anything longer was never one. */
const LONGEST_ID = 200;

const mendHeldShot: Mend<Shot | null> = (was, field, note) => {
  if (was === null) return null;
  if (isPlainObject(was)) return mendShot(was, field, note);
  note(field, was, null);
  return null;
};

const mendDesk: Mend<Desk> = mendObject<Desk>({
  shot: mendShot,
  heldShot: mendHeldShot,
  choice: mendObject<Choice>({
    cues: mendLine(LONGEST_ID, DEFAULT_CHOICE.cues),
    cloths: mendLine(LONGEST_ID, DEFAULT_CHOICE.cloths),
    balls: mendLine(LONGEST_ID, DEFAULT_CHOICE.balls),
    tables: mendLine(LONGEST_ID, DEFAULT_CHOICE.tables),
  }),
  preferences: mendPreferences,
  pocket: mendAbsent(
    DEFAULT_POCKET,
    mendObject<Pocket>({
      distanceM: mendNumber(POCKET_RANGES.distanceM, DEFAULT_POCKET.distanceM),
      mouthM: mendNumber(POCKET_RANGES.mouthM, DEFAULT_POCKET.mouthM),
    }),
  ),
  player: mendAbsent(
    DEFAULT_DESK.player,
    mendWord(['steady', 'club', 'beginner'], DEFAULT_DESK.player),
  ),
});

/** A valid desk, and what had to be mended to make it so. */
export interface ParsedDesk {
  readonly desk: Desk;
  readonly repairs: readonly Repair[];
}

/**
 * A valid desk out of anything, its choice made of records that are on the shelves.
 * @param shelves none of them empty.
 */
export function parseDesk(raw: unknown, shelves: ShelfContents): ParsedDesk {
  const repairs: Repair[] = [];
  const note = (field: string, was: unknown, now: unknown) => {
    repairs.push({ store: 'desk', id: 'desk', field, was, now });
  };
  const desk = isPlainObject(raw) ? mendDesk(raw, '', note) : DEFAULT_DESK;
  const choice = Object.fromEntries(
    SHELF_NAMES.map((shelf) => [shelf, settle(shelf, desk.choice, shelves, note)]),
  ) as Record<ShelfName, string>;
  return { desk: { ...desk, choice: { ...desk.choice, ...choice } }, repairs };
}

function settle(
  shelf: ShelfName,
  choice: Choice,
  shelves: ShelfContents,
  note: (field: string, was: unknown, now: unknown) => void,
): string {
  const ids: readonly string[] = shelves[shelf].map((record) => record.id);
  if (ids.includes(choice[shelf])) return choice[shelf];
  const byDefault = DEFAULT_CHOICE[shelf];
  const now = ids.includes(byDefault) ? byDefault : (ids[0] ?? byDefault);
  note(`choice.${shelf}`, choice[shelf], now);
  return now;
}
