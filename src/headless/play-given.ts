import type { Kit } from '../engine/kit/kit';
import type { BallName, NamedBall } from '../engine/lie/position';
import { isWithin } from '../engine/numerics/range';
import { TABLE_RANGES, WPA_POCKETS } from '../engine/table/pocket-standard';
import { type TableShape, tableShape } from '../engine/table/table-shape';
import { checkKit } from './check-kit';
import { type DoorRefusal, isRefusal, notTaken, refusedAt, span, worded } from './door-refusal';
import { type Fields, isFields } from './json-fields';
import { kitFrom } from './parse-request';

/** A table with balls on it, as a request gives it. */
export interface GivenTable {
  readonly shape: TableShape;
  readonly balls: readonly NamedBall[];
  /** Its slope as seen from the break end. */
  readonly kit: Kit;
}

/** The names of a request with a table, and of the objects in it. */
export const TABLE_NAMES = {
  table: Object.keys(TABLE_RANGES),
  'balls[]': ['name', 'xM', 'yM'],
} as const;

const HIGHEST_NUMBER = 15;

/** Reads table, balls and kit, or tells why they cannot be taken. */
export function parseGivenTable(fields: Fields): GivenTable | DoorRefusal {
  const shape = parseShape(fields.table);
  if (isRefusal(shape)) return shape;
  const balls = parseBalls(fields.balls);
  if ('ok' in balls) return balls;
  const kit = kitFrom(fields.kit);
  const problem = checkKit(kit);
  return problem === null ? { shape, balls, kit } : worded(problem);
}

function parseShape(given: unknown): TableShape | DoorRefusal {
  if (!isFields(given)) return notTaken('table', 'an object with lengthM and widthM');
  const { lengthM, widthM } = given;
  if (!isWithin(TABLE_RANGES.lengthM, lengthM)) {
    return refusedAt('table', notTaken('lengthM', span(TABLE_RANGES.lengthM)));
  }
  if (!isWithin(TABLE_RANGES.widthM, widthM)) {
    return refusedAt('table', notTaken('widthM', span(TABLE_RANGES.widthM)));
  }
  return tableShape(lengthM, widthM, WPA_POCKETS);
}

function parseBalls(given: unknown): readonly NamedBall[] | DoorRefusal {
  if (!Array.isArray(given)) return notTaken('balls', 'a list of balls');
  const balls: NamedBall[] = [];
  for (const [index, one] of given.entries()) {
    const ball = parseBall(one);
    if (isRefusal(ball)) return refusedAt(`balls[${index}]`, ball);
    if (balls.some(({ name }) => name === ball.name)) {
      return notTaken('balls', `a list with each ball once, and not ${ball.name} twice`);
    }
    balls.push(ball);
  }
  if (balls.some(({ name }) => name === 'cue')) return balls;
  return notTaken('balls', 'a list with the cue ball in it', 'Give a ball named "cue".');
}

function parseBall(given: unknown): NamedBall | DoorRefusal {
  if (!isFields(given)) return notTaken('name', 'that of an object with name, xM and yM');
  const { name, xM, yM } = given;
  if (!isBallName(name)) return notTaken('name', `"cue" or a number from 1 to ${HIGHEST_NUMBER}`);
  if (typeof xM !== 'number') return notTaken('xM', 'a number of metres');
  return typeof yM === 'number' ? { name, xM, yM } : notTaken('yM', 'a number of metres');
}

function isBallName(name: unknown): name is BallName {
  return (
    name === 'cue' || (Number.isInteger(name) && isWithin({ min: 1, max: HIGHEST_NUMBER }, name))
  );
}
