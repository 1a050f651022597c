import { bracketedRoot } from '../engine/numerics/bracketed-root';
import { heldWithin, type Range } from '../engine/numerics/range';
import { kitFields } from '../store/kit-fields';
import { numberAt, withNumberAt } from '../store/number-at';
import type { ShelfName, Shelves } from '../store/records';
import { FELT_FIGURES, type FeltName, type FeltSetting } from '../units/felt-figures';

/** Numbers of a record that a figure moves, all by the same factor. */
export const FELT_PATHS: { readonly [N in FeltName]: readonly string[] } = {
  squirt: ['massRatio'],
  pivot: ['massRatio'],
  run: ['rollFriction'],
  draw: ['slideFriction'],
  throw: ['ballFriction.a', 'ballFriction.b'],
  rebound: ['cushion.restitution'],
};

/** A figure of one record: what it is, and the records it could be of. */
export interface FeltNumber<S extends ShelfName> {
  readonly name: FeltName;
  readonly shelf: S;
  /** The kit in play with a record in its place. */
  readonly settingOf: (record: Shelves[S]) => FeltSetting;
}

/** The figure of a record, SI. */
export function feltAt<S extends ShelfName>(
  { name, settingOf }: FeltNumber<S>,
  record: Shelves[S],
): number {
  return FELT_FIGURES[name](settingOf(record));
}

/** What the figure can be as far as its numbers go, SI. */
export function feltRange<S extends ShelfName>(felt: FeltNumber<S>, record: Shelves[S]): Range {
  const { least, most } = reach(felt, record);
  const ends = [feltAt(felt, moved(felt, record, least)), feltAt(felt, moved(felt, record, most))];
  return { min: Math.min(...ends), max: Math.max(...ends) };
}

/** A hair within the ends: beyond where friction stops all slip, more of it changes nothing. */
const WITHIN = 1e-9;

/**
 * The record with its numbers so that the figure comes out, SI; they are found by the figure's own
 * law, so there is none to be turned round. Solved to ten digits.
 */
export function withFelt<S extends ShelfName>(
  felt: FeltNumber<S>,
  record: Shelves[S],
  wanted: number,
): Shelves[S] {
  const { least, most } = reach(felt, record);
  const { min, max } = feltRange(felt, record);
  const hair = WITHIN * (max - min);
  const target = heldWithin({ min: min + hair, max: max - hair }, wanted);
  const missAt = (factor: number) => feltAt(felt, moved(felt, record, factor)) - target;
  const tolerance = 1e-11 * Math.max(Math.abs(target), max - min);
  const ends = [missAt(least), missAt(most)] as const;
  const { x } = bracketedRoot(missAt, least, ends[0], most, ends[1], 0, tolerance);
  return moved(felt, record, x);
}

/** The factors that keep each number within its range. */
function reach<S extends ShelfName>({ name, shelf }: FeltNumber<S>, record: Shelves[S]) {
  const bounds = FELT_PATHS[name].map((path) => {
    const { min, max } = fieldAt(shelf, path).range;
    const base = baseOf(shelf, record, name, path);
    return base > 0 ? { least: min / base, most: max / base } : { least: 0, most: Infinity };
  });
  return {
    least: Math.max(...bounds.map(({ least }) => least)),
    most: Math.min(...bounds.map(({ most }) => most)),
  };
}

function moved<S extends ShelfName>(
  { name, shelf }: FeltNumber<S>,
  record: Shelves[S],
  factor: number,
): Shelves[S] {
  return FELT_PATHS[name].reduce((now, path) => {
    const value = factor * baseOf(shelf, record, name, path);
    return withNumberAt(now, path, heldWithin(fieldAt(shelf, path).range, value));
  }, record);
}

/** What a number is moved from: its own value, or the usual one where nothing is there to move. */
function baseOf<S extends ShelfName>(
  shelf: S,
  record: Shelves[S],
  name: FeltName,
  path: string,
): number {
  const own = (at: string) => numberAt(record, at) ?? 0;
  return FELT_PATHS[name].some((at) => own(at) > 0) ? own(path) : fieldAt(shelf, path).usual;
}

function fieldAt(shelf: ShelfName, path: string) {
  const field = kitFields(shelf).find((one) => one.path === path);
  if (field === undefined) throw new RangeError(`${path} is no number of ${shelf}`);
  return field;
}
