import type { Pot } from '../engine/goal/goal';
import type { LegalRule } from '../engine/goal/legal';
import type { NamedBall } from '../engine/lie/position';
import { isWithin } from '../engine/numerics/range';
import type { PocketName } from '../engine/table/pocket-shape';
import type { ParsedRow } from './contents';
import { isTime } from './known-values';
import {
  isPlainObject,
  type Mend,
  mendLine,
  mendList,
  mendNumber,
  mendObject,
  mendOrNone,
  mendUnless,
  mendWord,
} from './mend';
import { isBallName, isDrillOrNone, isObjectBall, isStruck } from './parse-drill';
import { LONGEST_NAME, parseWithId } from './parse-named';
import type { PlayedPosition } from './player';
import { BED_RANGES, NINE_FOOT, TABLE_RANGES, ZONE_RADIUS_RANGE } from './record-ranges';
import { type GoalDraft, NOTHING_CHOSEN, type SavedPosition, type Zone } from './saved-position';

/** The cue ball and fifteen others. */
const MOST_BALLS = 16;

const POCKET_NAMES: readonly PocketName[] = [
  'near-left',
  'near-right',
  'middle-right',
  'far-right',
  'far-left',
  'middle-left',
];

const isPocketName = (was: unknown): was is PocketName => POCKET_NAMES.some((name) => name === was);

const RULES: readonly unknown[] = ['any', 'lowest', 'low', 'high'];

const isRule = (was: unknown): was is LegalRule =>
  RULES.includes(was) || (Array.isArray(was) && was.length < MOST_BALLS && was.every(isObjectBall));

/** A place moved into range would be an invented one. */
function isPlaced(was: unknown): was is Record<string, unknown> {
  return isPlainObject(was) && isWithin(BED_RANGES.xM, was.xM) && isWithin(BED_RANGES.yM, was.yM);
}

function isBall(was: unknown): was is NamedBall & Record<string, unknown> {
  return isPlaced(was) && isBallName(was.name);
}

/** Keeps what can be read, and of two balls of one name the first. */
const mendBalls: Mend<readonly NamedBall[]> = (was, field, note) => {
  const names = new Set<unknown>();
  const isNew = (ball: unknown) => {
    if (!isBall(ball) || names.has(ball.name)) return false;
    names.add(ball.name);
    return true;
  };
  return mendList<NamedBall>(MOST_BALLS, isNew, (ball) => ball as NamedBall)(was, field, note);
};

const mendZone: Mend<Zone | null> = mendOrNone(
  (was) => isPlaced(was) && isWithin(ZONE_RADIUS_RANGE, was.radiusM),
  mendObject<Zone>({
    xM: mendNumber(BED_RANGES.xM, 0),
    yM: mendNumber(BED_RANGES.yM, 0),
    radiusM: mendNumber(ZONE_RADIUS_RANGE, ZONE_RADIUS_RANGE.min),
  }),
);

const mendGoal = mendObject<GoalDraft>({
  kind: mendWord(['pot'], 'pot'),
  ball: mendUnless((was) => was === null || isObjectBall(was), null),
  pocket: mendUnless((was): was is PocketName | null => was === null || isPocketName(was), null),
  via: mendUnless((was): was is readonly [] => Array.isArray(was) && was.length === 0, []),
});

/**
 * A row as this version writes it. Up to version 3 of the database there were direct cuts alone: a row
 * had an `intent`, of the ball and the pocket.
 */
export function withGoal(row: unknown): unknown {
  if (!isPlainObject(row) || 'goal' in row) return row;
  const { intent, ...rest } = row;
  return { ...rest, goal: { ...NOTHING_CHOSEN, ...(isPlainObject(intent) ? intent : {}) } };
}

/** Whether it says where a shot lay and how it was to be struck: half of that tells nothing. */
export function isPlayedPosition(was: unknown): was is PlayedPosition {
  if (!isPlainObject(was)) return false;
  const { lengthM, widthM, balls, goal, stroke } = was;
  return (
    isWithin(TABLE_RANGES.lengthM, lengthM) &&
    isWithin(TABLE_RANGES.widthM, widthM) &&
    Array.isArray(balls) &&
    balls.length <= MOST_BALLS &&
    balls.every(isBall) &&
    isPot(goal) &&
    isStruck(stroke)
  );
}

function isPot(was: unknown): was is Pot {
  if (!isPlainObject(was) || was.kind !== 'pot' || !isObjectBall(was.ball)) return false;
  return isPocketName(was.pocket) && Array.isArray(was.via) && was.via.length === 0;
}

/**
 * A valid position out of anything found among them. Beyond repair is one without a list of balls.
 * Balls that cannot be read are left out, and so are a goal, a zone and a way to practise.
 */
export function parsePosition(given: unknown): ParsedRow<SavedPosition> {
  return parseWithId('positions', withGoal(given), (row, id) =>
    Array.isArray(row.balls) ? mendPosition(id, row) : 'unreadable',
  );
}

type Newer = 'legal' | 'drill';
type Fields = { readonly [K in keyof SavedPosition]-?: Mend<Exclude<SavedPosition[K], undefined>> };

/** Rows may be older than what is told here of which ball may be touched first, and of practice. */
function mendPosition(id: string, row: Record<string, unknown>): Mend<SavedPosition> {
  return mendObject<SavedPosition>({
    ...fieldsOf(id),
    ...('legal' in row && { legal: mendUnless(isRule, 'any') }),
    ...('drill' in row && { drill: mendUnless(isDrillOrNone, null) }),
  } as Fields);
}

function fieldsOf(id: string): Omit<Fields, Newer> {
  return {
    id: () => id,
    name: mendLine(LONGEST_NAME, 'Position without a name'),
    origin: mendWord(['invented', 'by-hand'], 'by-hand'),
    lengthM: mendNumber(TABLE_RANGES.lengthM, NINE_FOOT.lengthM),
    widthM: mendNumber(TABLE_RANGES.widthM, NINE_FOOT.widthM),
    balls: mendBalls,
    goal: mendGoal,
    zone: mendZone,
    changedAtMs: mendUnless(isTime, 0),
  };
}
