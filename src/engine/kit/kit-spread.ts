import { heldWithin } from '../numerics/range';
import type { Kit } from './kit';
import {
  type KitNumbers,
  type NumberPath,
  numberIn,
  type Part,
  PLACED_NUMBERS,
  type PlacedNumber,
  withNumber,
} from './kit-numbers';

type QuantityAt<P extends NumberPath> = KitNumbers[P] extends { readonly spread: object }
  ? KitNumbers[P] extends { readonly quantity: infer Q extends string }
    ? Q
    : P
  : never;

/**
 * What is not known of a kit: mostly one number of it. `ballFriction` stands for its whole curve,
 * whose numbers move together.
 */
export type KitQuantity = { [P in NumberPath]: QuantityAt<P> }[NumberPath];

/**
 * What is not known of a kit, one standard deviation each. Slopes in m/m; a cushion's restitution as
 * a share of what it lacks to 1; all else as a share of the value (of its logarithm, for nothing
 * here can turn negative).
 */
export type KitSpread = { readonly [Q in KitQuantity]: number };

/** A quantity: its numbers in a kit, whose it is, and how little is known of it unmeasured. */
interface QuantityFacts {
  readonly numbers: readonly [PlacedNumber, ...PlacedNumber[]];
  readonly part: Part;
  readonly counts: NonNullable<PlacedNumber['spread']>['counts'];
  readonly sd: number;
}

/** The quantities, from the table of a kit's numbers. */
export const QUANTITIES = quantitiesFrom(PLACED_NUMBERS);

function quantitiesFrom(all: readonly PlacedNumber[]) {
  const found: Partial<Record<KitQuantity, QuantityFacts>> = {};
  for (const number of all) {
    if (number.spread === undefined) continue;
    const name = (number.quantity ?? number.path) as KitQuantity;
    const [first, ...others] = found[name]?.numbers ?? [];
    const numbers: QuantityFacts['numbers'] = first ? [first, ...others, number] : [number];
    found[name] = { numbers, part: number.part, ...number.spread };
  }
  return found as { readonly [Q in KitQuantity]: QuantityFacts };
}

/** The quantities, in the order in which ties are told. */
export const KIT_QUANTITIES = Object.keys(QUANTITIES) as readonly KitQuantity[];

/** The quantities of each part. */
export const QUANTITIES_OF: { readonly [P in Part]: readonly KitQuantity[] } = {
  cue: quantitiesOf('cue'),
  cloth: quantitiesOf('cloth'),
  balls: quantitiesOf('balls'),
  table: quantitiesOf('table'),
};

function quantitiesOf(part: Part): readonly KitQuantity[] {
  return KIT_QUANTITIES.filter((name) => QUANTITIES[name].part === part);
}

/**
 * How the errors of the quantities go together, row by row in the order of {@link KIT_QUANTITIES}:
 * 1 on the diagonal. Measurements tie quantities to each other; unmeasured ones are independent.
 */
export type KitCorrelation = readonly (readonly number[])[];

/** What is not known of a kit nobody has measured. */
export const UNMEASURED = Object.fromEntries(
  KIT_QUANTITIES.map((name) => [name, QUANTITIES[name].sd]),
) as KitSpread;

/**
 * What a spread of 1 is worth in a quantity's own unit, where the quantity has this value. That of a
 * whole curve stays a share, for it has no unit.
 */
export function spreadUnit(quantity: KitQuantity, value: number): number {
  const { counts, numbers } = QUANTITIES[quantity];
  if (counts === 'lack') return 1 - value;
  return counts === 'share' && numbers.length === 1 ? value : 1;
}

/** A quantity of a kit as one number: of ball friction, the coefficient at a slip of 1 m/s. */
export function quantityIn(kit: Kit, quantity: KitQuantity): number {
  const { a, b, c } = kit.ballFriction;
  if (quantity === 'ballFriction') return a + b * Math.exp(-c);
  return numberIn(kit, QUANTITIES[quantity].numbers[0]);
}

/** A kit with one of its quantities moved by so many standard deviations, kept within its range. */
export function kitMoved(kit: Kit, spread: KitSpread, quantity: KitQuantity, sds: number): Kit {
  const by = spread[quantity] * sds;
  const { numbers, counts } = QUANTITIES[quantity];
  let moved = kit;
  for (const number of numbers) {
    const value = numberIn(kit, number);
    moved = withNumber(moved, number, heldWithin(number.range, MOVED[counts](value, by)));
  }
  return moved;
}

const MOVED = {
  share: (value: number, by: number) => value * Math.exp(by),
  slope: (value: number, by: number) => value + by,
  lack: (value: number, by: number) => 1 - (1 - value) * Math.exp(-by),
} as const;
