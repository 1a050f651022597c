import { DEFAULT_KIT } from '../engine/kit/kit';
import { numberIn, type Part, type PathOf, PLACED_NUMBERS } from '../engine/kit/kit-numbers';
import type { Range } from '../engine/numerics/range';
import { withNumberAt } from './number-at';
import { CUE_RANGES, NINE_FOOT, TABLE_RANGES } from './record-ranges';
import type { Named, ShelfName, Shelves } from './records';

/** What the engine calls what stands on a shelf. */
export const PART_OF = {
  cues: 'cue',
  cloths: 'cloth',
  balls: 'balls',
  tables: 'table',
} as const satisfies { readonly [S in ShelfName]: Part };

/** What a record holds and the engine's kit does not. */
interface OwnPaths {
  readonly cues: 'tipDiameterM';
  readonly cloths: never;
  readonly balls: never;
  readonly tables: 'lengthM' | 'widthM';
}

/** The dotted name of a number on that shelf. */
export type KitFieldPath<S extends ShelfName> = PathOf<(typeof PART_OF)[S]> | OwnPaths[S];

/** A number of a record, by its dotted name: what it may be, and what stands in for none; SI. */
export interface KitField<S extends ShelfName = ShelfName> {
  readonly path: KitFieldPath<S>;
  readonly range: Range;
  readonly usual: number;
}

const OWN = {
  tipDiameterM: { range: CUE_RANGES.tipDiameterM, usual: 0.013 },
  lengthM: { range: TABLE_RANGES.lengthM, usual: NINE_FOOT.lengthM },
  widthM: { range: TABLE_RANGES.widthM, usual: NINE_FOOT.widthM },
} as const;

/** Where a real thing is narrower than what the engine accepts. */
const NARROWED: { readonly [path: string]: Range } = {
  massRatio: CUE_RANGES.massRatio,
  tipRadiusM: CUE_RANGES.tipRadiusM,
};

const KIT_FIELDS: { readonly [S in ShelfName]: readonly KitField<S>[] } = {
  cues: inOrder('cues', ['massRatio', 'tipDiameterM']),
  cloths: inOrder('cloths', []),
  balls: inOrder('balls', ['ballRadiusM', 'ballRestitution']),
  tables: inOrder('tables', ['lengthM', 'widthM']),
};

/** The numbers of a shelf's records, in the order to show them. */
export function kitFields<S extends ShelfName>(shelf: S): readonly KitField<S>[] {
  return KIT_FIELDS[shelf];
}

/** Some numbers first, then the rest of what the engine knows of that part. */
function inOrder<S extends ShelfName>(
  shelf: S,
  first: readonly KitFieldPath<S>[],
): readonly KitField<S>[] {
  const known = PLACED_NUMBERS.filter(({ part }) => part === PART_OF[shelf]).map((number) => {
    const range = NARROWED[number.path] ?? number.range;
    return { path: number.path, range, usual: numberIn(DEFAULT_KIT, number) };
  });
  const own = Object.entries(OWN).map(([path, number]) => ({ path, ...number }));
  const all = [...known, ...own] as unknown as readonly KitField<S>[];
  const leading = first.flatMap((path) => all.filter((number) => number.path === path));
  const others = known.filter(({ path }) => !first.some((name) => name === path));
  return [...leading, ...(others as unknown as readonly KitField<S>[])];
}

/** The usual numbers of a shelf's records, which stand where nothing else is said. */
export function usualNumbers<S extends ShelfName>(shelf: S): Omit<Shelves[S], keyof Named> {
  return KIT_FIELDS[shelf].reduce<object>(
    (made, { path, usual }) => withNumberAt(made, path, usual),
    {},
  ) as Omit<Shelves[S], keyof Named>;
}
