import type { Repair, ShelfContents } from './contents';
import { DEFAULT_CHOICE, DEFAULT_DESK, DEFAULT_POCKET } from './default-desk';
import {
  isPlainObject,
  type Mend,
  mendAbsent,
  mendList,
  mendNumber,
  mendObject,
  mendOrNone,
  mendUnless,
  mendWord,
} from './mend';
import { isId } from './parse-named';
import { mendPreferences } from './parse-preferences';
import { isShotLeft, mendLaidShot, mendShot } from './parse-shot';
import { POCKET_RANGES } from './pocket-ranges';
import type { Choice, Desk, Pocket, ShelfName } from './records';
import { SHELF_NAMES } from './shelf-names';

/** As many as a thumb can look through. */
export const MOST_RECENT_SHOTS = 12;

export const mendDesk: Mend<Desk> = mendObject<Desk>({
  shot: mendLaidShot,
  heldShot: mendOrNone(isPlainObject, mendLaidShot),
  recentShots: mendAbsent(
    DEFAULT_DESK.recentShots,
    mendList(MOST_RECENT_SHOTS, isShotLeft, mendShot),
  ),
  choice: mendObject<Choice>({
    cues: mendUnless(isId, DEFAULT_CHOICE.cues),
    cloths: mendUnless(isId, DEFAULT_CHOICE.cloths),
    balls: mendUnless(isId, DEFAULT_CHOICE.balls),
    tables: mendUnless(isId, DEFAULT_CHOICE.tables),
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
  const desk = isPlainObject(raw) ? mendDesk(withoutOldHeading(raw), '', note) : DEFAULT_DESK;
  const choice = Object.fromEntries(
    SHELF_NAMES.map((shelf) => [shelf, settle(shelf, desk.choice, shelves, note)]),
  ) as Record<ShelfName, string>;
  return { desk: { ...desk, choice: { ...desk.choice, ...choice } }, repairs };
}

/**
 * A heading used to stand beside the shot, and stayed there when the shot was laid anew. Nobody can
 * tell whether it still is the shot's, and a wrong one turns the bed's slope: none is taken over.
 */
function withoutOldHeading({ headingRad: _old, ...row }: Record<string, unknown>) {
  return row;
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
