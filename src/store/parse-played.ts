import { INPUT_RANGES } from '../engine/direct/input-ranges';
import type { Shot } from '../engine/direct/shot';
import { checkTarget } from '../engine/goal/check-target';
import type { Opening } from '../engine/goal/opening';
import type { Target } from '../engine/goal/target';
import { DEFAULT_KIT, type Kit } from '../engine/kit/kit';
import { numberIn, PLACED_NUMBERS, type PlacedNumber, withNumber } from '../engine/kit/kit-numbers';
import { KIT_QUANTITIES, type KitSpread, UNMEASURED } from '../engine/kit/kit-spread';
import { isWithin, type Range } from '../engine/numerics/range';
import { RESULTS } from '../engine/player/results';
import type { Result } from '../engine/player/shot-line';
import { STROKE_RANGES } from '../engine/stroke/stroke';
import type { Point } from '../engine/table/point';
import type { ParsedRow } from './contents';
import { isCount, isFlag, isTime, isWithinAll } from './known-values';
import { isPlainObject, type Mend, mendAbsent, mendObject, mendOrNone, mendUnless } from './mend';
import { isPlayedDrill } from './parse-drill';
import { isId, parseWithId } from './parse-named';
import { isPlayedPosition } from './parse-position';
import type { PlayedPosition, PlayedShot } from './player';
import { BED_RANGES, SPREAD_RANGE } from './record-ranges';

const { objectDistanceM: REACH, ...NEEDED } = INPUT_RANGES;

function isShot(was: unknown): was is Shot {
  if (!isPlainObject(was) || !isWithinAll(NEEDED, was)) return false;
  return was.objectDistanceM === undefined || isWithin(REACH, was.objectDistanceM);
}

/** More speeds than a mouth is looked at with. */
const MOST_OPENINGS = 16;
const OPENING_RANGES = {
  speedMps: STROKE_RANGES.speedMps,
  midM: { min: -1, max: 1 },
  halfM: { min: 0, max: 1 },
} as const satisfies Record<keyof Opening, Range>;

function areOpenings(was: unknown): boolean {
  if (was === undefined) return true;
  if (!Array.isArray(was) || was.length === 0 || was.length > MOST_OPENINGS) return false;
  return was.every((opening) => isWithinAll(OPENING_RANGES, opening));
}

function isTarget(was: unknown, ballRadiusM: number): was is Target {
  if (!isPlainObject(was) || !areOpenings(was.openings)) return false;
  if (was.kind !== 'mouth' && was.kind !== 'angle') return false;
  return checkTarget(was as unknown as Target, ballRadiusM) === null;
}

/** The number at a row's place, as it was found; undefined where there is none. */
function foundAt(was: Record<string, unknown>, { key, inner }: PlacedNumber): unknown {
  const held = was[key];
  if (inner === null || held === undefined) return held;
  return isPlainObject(held) ? held[inner] : null;
}

/**
 * The kit of a shot. A number that kits did not have at the time is as usual; null where one is out of
 * range, for a kit moved into range would be another's.
 */
function kitFrom(was: unknown): Kit | null {
  if (!isPlainObject(was)) return null;
  const missing: PlacedNumber[] = [];
  for (const number of PLACED_NUMBERS) {
    const found = foundAt(was, number);
    if (found === undefined) missing.push(number);
    else if (!isWithin(number.range, found)) return null;
  }
  return missing.reduce<Kit>(
    (kit, number) => withNumber(kit, number, numberIn(DEFAULT_KIT, number)),
    was as unknown as Kit,
  );
}

/** The same for how little of it was known. */
function spreadFrom(was: unknown): KitSpread | null {
  if (!isPlainObject(was)) return null;
  const spread = { ...UNMEASURED, ...was };
  return KIT_QUANTITIES.every((name) => isWithin(SPREAD_RANGE, spread[name])) ? spread : null;
}

const isResult = (was: unknown): was is Result => RESULTS.some((result) => result === was);
const isPlace = (was: unknown): was is Point | null =>
  was === null || isWithinAll({ x: BED_RANGES.xM, y: BED_RANGES.yM }, was);

const mendPosition: Mend<PlayedPosition | null> = mendOrNone(
  isPlayedPosition,
  (was) => was as PlayedPosition,
);

/**
 * A valid played shot out of anything found among them. Beyond repair is one that does not say whose it
 * was, what was asked, with what, or what became of it. Of the rest, what cannot be read was not said:
 * nothing is learnt from one that may not have been struck as meant.
 */
export function parsePlayed(raw: unknown): ParsedRow<PlayedShot> {
  return parseWithId('played', raw, (row, id) => {
    const { playerId, shot, target, result, aimRad } = row;
    const [kit, spread] = [kitFrom(row.kit), spreadFrom(row.spread)];
    if (kit === null || spread === null || !isId(playerId) || !isResult(result)) {
      return 'unreadable';
    }
    if (!isShot(shot) || !isTarget(target, kit.ballRadiusM)) return 'unreadable';
    if (!isWithin(STROKE_RANGES.aimRad, aimRad)) return 'unreadable';
    return mendObject<PlayedShot>({
      id: () => id,
      playerId: () => playerId,
      atMs: mendUnless(isTime, 0),
      modelVersion: mendUnless(isCount, 1),
      shot: () => shot,
      aimRad: () => aimRad,
      target: () => target,
      kit: () => kit,
      spread: () => spread,
      position: mendPosition,
      result: () => result,
      scratched: mendUnless(isFlag, false),
      cueBall: mendUnless(isPlace, null),
      asMeant: mendUnless(isFlag, false),
      testId: mendUnless((was): was is string | null => was === null || isId(was), null),
      // Shots are older than practice.
      drill: mendAbsent(null, mendUnless(isPlayedDrill, null)),
    });
  });
}
