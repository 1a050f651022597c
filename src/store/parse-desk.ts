import { INPUT_RANGES } from '../engine/direct/input-ranges';
import type { Shot } from '../engine/direct/shot';
import { TRIAL_RANGES } from '../engine/fit/trials/trial';
import type { Range } from '../engine/numerics/range';
import type { Lists, Repair, ShelfContents } from './contents';
import {
  DEFAULT_CHOICE,
  DEFAULT_DESK,
  DEFAULT_POCKET,
  DEFAULT_PREFERENCES,
  DEFAULT_SHOT,
} from './default-desk';
import {
  isPlainObject,
  type Mend,
  mendAbsent,
  mendList,
  mendNumber,
  mendObject,
  mendOrNone,
  mendOrNull,
  mendUnless,
  mendWord,
  within,
} from './mend';
import { numberAt } from './number-at';
import { isId } from './parse-named';
import { POCKET_RANGES } from './record-ranges';
import {
  type Choice,
  type Desk,
  type LaidShot,
  type Pocket,
  type Preferences,
  SHELF_NAMES,
  type ShelfName,
} from './records';

const mendInputs = mendObject<Omit<Shot, 'objectDistanceM'>>({
  distanceM: mendNumber(INPUT_RANGES.distanceM, DEFAULT_SHOT.distanceM),
  cutRad: mendNumber(INPUT_RANGES.cutRad, DEFAULT_SHOT.cutRad),
  side: mendNumber(INPUT_RANGES.side, DEFAULT_SHOT.side),
  height: mendNumber(INPUT_RANGES.height, DEFAULT_SHOT.height),
  elevationRad: mendNumber(INPUT_RANGES.elevationRad, DEFAULT_SHOT.elevationRad),
  speedMps: mendNumber(INPUT_RANGES.speedMps, DEFAULT_SHOT.speedMps),
});

/** Whether anything is left of a shot: one without a single number of its own would be invented. */
function isShotLeft(was: unknown): boolean {
  return (
    isPlainObject(was) && Object.keys(INPUT_RANGES).some((name) => numberAt(was, name) !== null)
  );
}

/** Mends a shot. An unreadable object-ball distance is left out: every distance will do. */
const mendShot: Mend<Shot> = (was, field, note) => {
  const { objectDistanceM, ...shot }: Record<string, unknown> & Omit<Shot, 'objectDistanceM'> = {
    ...mendInputs(was, field, note),
  };
  if (objectDistanceM === undefined) return shot;
  const path = within(field, 'objectDistanceM');
  if (typeof objectDistanceM !== 'number' || !Number.isFinite(objectDistanceM)) {
    note(path, objectDistanceM, undefined);
    return shot;
  }
  const mended = mendNumber(INPUT_RANGES.objectDistanceM, objectDistanceM);
  return { ...shot, objectDistanceM: mended(objectDistanceM, path, note) };
};

const mendHeading = mendAbsent(null, mendOrNull(TRIAL_RANGES.headingRad));

/** Mends a shot, and how it lies on the table. */
const mendLaidShot: Mend<LaidShot> = (was, field, note) => {
  const shot: Shot & { headingRad?: unknown } = mendShot(was, field, note);
  return { ...shot, headingRad: mendHeading(shot.headingRad, within(field, 'headingRad'), note) };
};

/** Mends preferences: a word this version does not know gives way to the default. */
const mendPreferences: Mend<Preferences> = mendObject<Preferences>({
  lengthUnit: mendWord(['mm', 'cm', 'in'], DEFAULT_PREFERENCES.lengthUnit),
  distanceUnit: mendWord(
    ['m', 'cm', 'ft', 'in', 'diamonds', 'table-lengths'],
    DEFAULT_PREFERENCES.distanceUnit,
  ),
  distanceFrom: mendWord(['ghost-ball', 'ball-to-ball'], DEFAULT_PREFERENCES.distanceFrom),
  speedUnit: mendWord(['mps', 'kmh', 'mph', 'lengths'], DEFAULT_PREFERENCES.speedUnit),
  cutUnit: mendWord(['degrees', 'ball-hit'], DEFAULT_PREFERENCES.cutUnit),
  tipUnit: mendAbsent(
    DEFAULT_PREFERENCES.tipUnit,
    mendWord(['tips', 'clock', 'radii'], DEFAULT_PREFERENCES.tipUnit),
  ),
  lead: mendWord(['object-ball', 'ghost-ball'], DEFAULT_PREFERENCES.lead),
  hand: mendWord(['right', 'left'], DEFAULT_PREFERENCES.hand),
  theme: mendWord(['dark', 'light', 'system'], DEFAULT_PREFERENCES.theme),
});

/** As many as a thumb can look through. */
export const MOST_RECENT_SHOTS = 12;

/** The laws under which desks were kept before they told. */
const FIRST_LAW = 1;
const LAW_RANGE: Range = { min: FIRST_LAW, max: 1e6 };

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
  playerId: mendAbsent(
    DEFAULT_DESK.playerId,
    mendUnless(
      (was): was is string => was === DEFAULT_DESK.playerId || isId(was),
      DEFAULT_DESK.playerId,
    ),
  ),
  law: mendAbsent(FIRST_LAW, mendNumber(LAW_RANGE, DEFAULT_DESK.law)),
});

/** A valid desk, and what had to be mended to make it so. */
export interface ParsedDesk {
  readonly desk: Desk;
  readonly repairs: readonly Repair[];
}

/** What a desk chooses from. */
export type ChosenFrom = ShelfContents & Pick<Lists, 'players'>;

/**
 * A valid desk out of anything, its choice made of records that are on the shelves, its player one that
 * is there.
 * @param shelves none of them empty.
 */
export function parseDesk(raw: unknown, shelves: ChosenFrom): ParsedDesk {
  const repairs: Repair[] = [];
  const note = (field: string, was: unknown, now: unknown) => {
    repairs.push({ store: 'desk', id: 'desk', field, was, now });
  };
  const desk = isPlainObject(raw) ? mendDesk(withoutFormer(raw), '', note) : DEFAULT_DESK;
  const choice = Object.fromEntries(
    SHELF_NAMES.map((shelf) => [shelf, settle(shelf, desk.choice, shelves, note)]),
  ) as Record<ShelfName, string>;
  const playerId = settlePlayer(desk.playerId, shelves.players, note);
  return { desk: { ...desk, choice: { ...desk.choice, ...choice }, playerId }, repairs };
}

/**
 * A heading used to stand beside the shot, and stayed there when the shot was laid anew. Nobody can
 * tell whether it still is the shot's, and a wrong one turns the bed's slope: none is taken over. The
 * name of an invented player is a player of its own by now: `playerOfFormerDesk`.
 */
function withoutFormer({ headingRad: _old, player: _name, ...row }: Record<string, unknown>) {
  return row;
}

/** A desk that names nobody means the first there is, and so does one that names somebody gone. */
function settlePlayer(
  id: string,
  players: Lists['players'],
  note: (field: string, was: unknown, now: unknown) => void,
): string {
  const { playerId: first } = DEFAULT_DESK;
  if (id === first || players.some((player) => player.id === id)) return id;
  note('playerId', id, first);
  return first;
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
