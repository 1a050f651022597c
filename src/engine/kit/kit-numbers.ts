import { isWithin, type Range } from '../numerics/range';
import type { Kit } from './kit';

/** What a kit is put together of: each number of it belongs to one of these. */
export const PARTS = ['cue', 'cloth', 'balls', 'table'] as const;
export type Part = (typeof PARTS)[number];

/** The dotted name of a number in a kit: `massRatio`, `ballFriction.a`. */
export type NumberPath = {
  [K in keyof Kit]: Kit[K] extends number ? K : `${K}.${keyof Kit[K] & string}`;
}[keyof Kit];

/** What is not known of a number that nobody has measured. */
interface NotKnown {
  /**
   * `share`: of the value, that is of its logarithm. `slope`: in m/m, whatever the value. `lack`: of
   * what it lacks to 1, that is of the logarithm of that; less of it is more.
   */
  readonly counts: 'share' | 'slope' | 'lack';
  /** One standard deviation. */
  readonly sd: number;
}

/** A row of the table: whose a number is, what the engine takes, how little is known of it. */
interface KitNumber {
  readonly part: Part;
  readonly range: Range;
  /** Left out: it is known, or nothing here can measure it. */
  readonly spread?: NotKnown;
  /** What it is a number of, where that has a name of its own. */
  readonly quantity?: string;
}

/** Standard deviation of the logarithm, for a range taken as the central 95 %. */
function share(low: number, high: number) {
  return { counts: 'share', sd: Math.log(high / low) / (2 * 1.96) } as const;
}

/** Clean to dirty, within a factor of 1.6 either way (common practice, no source). */
const BALL_FRICTION = {
  part: 'balls',
  quantity: 'ballFriction',
  spread: share(1 / 1.6, 1.6),
} as const;

/**
 * Range: 10 mm a metre, twenty times what the WPA allows along a nine-foot bed. Spread: what the
 * WPA's flatness allows, 0.2 mm/m.
 */
const BED_SLOPE = {
  part: 'table',
  range: { min: -0.01, max: 0.01 },
  spread: { counts: 'slope', sd: 0.0002 },
} as const;

/**
 * Every number of a kit: a new one is a row here, and a field with its default in `kit`.
 *
 * Ranges are much wider than what a table shows, so that idealised kits, such as a cue without end
 * mass or balls without friction, can be asked too. Spreads of the cue, the cloth and the balls'
 * restitution: ranges from memory of the literature. A cue ball up to a tenth heavy: the same.
 *
 * The order is that in which ties between quantities are told.
 */
export const KIT_NUMBERS = {
  massRatio: {
    part: 'cue',
    range: { min: 2, max: Number.POSITIVE_INFINITY },
    spread: share(12, 50),
  },
  slideFriction: { part: 'cloth', range: { min: 0.02, max: 1 }, spread: share(0.15, 0.4) },
  // μ(u) = a + b·e^(−c·u): every value of it stays below 1. Known or not, its shape stays.
  'ballFriction.a': { ...BALL_FRICTION, range: { min: 0, max: 0.5 } },
  'ballFriction.b': { ...BALL_FRICTION, range: { min: 0, max: 0.5 } },
  'ballFriction.c': { part: 'balls', range: { min: 0, max: 20 } },
  rollFriction: { part: 'cloth', range: { min: 0.001, max: 0.1 }, spread: share(0.005, 0.016) },
  spinDecayRadS2: { part: 'cloth', range: { min: 0, max: 100 }, spread: share(5, 22) },
  ballRestitution: { part: 'balls', range: { min: 0.5, max: 1 }, spread: share(0.92, 0.98) },
  bedRestitution: { part: 'cloth', range: { min: 0, max: 0.95 }, spread: share(0.4, 0.7) },
  ballRadiusM: { part: 'balls', range: { min: 0.02, max: 0.04 } },
  tipRadiusM: { part: 'cue', range: { min: 0, max: 0.03 } },
  cueBallMassRatio: { part: 'balls', range: { min: 0.7, max: 1.5 }, spread: share(0.97, 1.05) },
  'bedSlope.alongM_per_M': { ...BED_SLOPE, quantity: 'bedSlopeAlong' },
  'bedSlope.rightM_per_M': { ...BED_SLOPE, quantity: 'bedSlopeRight' },
  // Wide of what tables show (noses 1.2-1.4 radii high, from memory), and within what lets every
  // ball part again: no nose so high and so rough that bed and cushion together jam the ball.
  // Spreads: our estimates. Lack 0.003 to 0.14 is e from 0.86 to 0.997, its deviation 0.04.
  'cushion.restitution': {
    part: 'table',
    quantity: 'cushionRestitution',
    range: { min: 0.5, max: 1 },
    spread: { counts: 'lack', sd: 1 },
  },
  'cushion.friction': {
    part: 'table',
    quantity: 'cushionFriction',
    range: { min: 0, max: 0.3 },
    spread: share(0.08, 0.24),
  },
  'cushion.lossPerMps': {
    part: 'table',
    quantity: 'cushionLoss',
    range: { min: 0, max: 0.3 },
    spread: share(0.03, 0.24),
  },
  'cushion.lossFromMps': {
    part: 'table',
    quantity: 'cushionLossFrom',
    range: { min: 0, max: 6 },
    spread: share(1.2, 3.3),
  },
  // Measured with a tape, or held: no rebound tells a high nose from a dead cushion.
  'cushion.noseHeight': { part: 'table', range: { min: 1.1, max: 1.45 } },
} as const satisfies { readonly [P in NumberPath]: KitNumber };

export type KitNumbers = typeof KIT_NUMBERS;

/** The numbers of a part. */
export type PathOf<P extends Part> = {
  [N in NumberPath]: KitNumbers[N]['part'] extends P ? N : never;
}[NumberPath];

type Head<P extends string> = P extends `${infer H}.${string}` ? H : P;
/** What a kit holds of one of its parts. */
export type PartNumbers<P extends Part> = Pick<Kit, Head<PathOf<P>> & keyof Kit>;

/** A row with its name, and where in a kit it stands. */
export interface PlacedNumber extends KitNumber {
  readonly path: NumberPath;
  readonly key: keyof Kit;
  /** Its name within what the key holds; null where that is the number itself. */
  readonly inner: string | null;
}

/** The rows in order. */
export const PLACED_NUMBERS: readonly PlacedNumber[] = Object.entries<KitNumber>(KIT_NUMBERS).map(
  ([path, row]) => {
    const [key, inner = null] = path.split('.');
    return { ...row, path: path as NumberPath, key: key as keyof Kit, inner };
  },
);

/** What a kit holds of a number. */
export function numberIn(kit: Kit, { key, inner }: PlacedNumber): number {
  const held: unknown = kit[key];
  return (inner === null ? held : (held as Readonly<Record<string, unknown>>)[inner]) as number;
}

/** A kit with one number in another's place. */
export function withNumber(kit: Kit, { key, inner }: PlacedNumber, value: number): Kit {
  if (inner === null) return { ...kit, [key]: value };
  return { ...kit, [key]: { ...(kit[key] as object), [inner]: value } };
}

/** What a kit, or a record that holds the same, has of a part, and nothing else. */
export function numbersOfPart<P extends Part>(part: P, holder: PartNumbers<P>): PartNumbers<P> {
  const own = PLACED_NUMBERS.filter((number) => number.part === part);
  return Object.fromEntries(
    own.map(({ key }) => [key, Reflect.get(holder, key)]),
  ) as unknown as PartNumbers<P>;
}

/** One number of a kit that the engine cannot take, and what it could. */
export interface KitProblem {
  /** Dotted where it is nested: `ballFriction.a`. */
  readonly quantity: string;
  readonly value: unknown;
  readonly range: Range;
}

/** Those that stand by themselves before those that are nested. */
const AS_CHECKED = [
  ...PLACED_NUMBERS.filter(({ inner }) => inner === null),
  ...PLACED_NUMBERS.filter(({ inner }) => inner !== null),
];

/** The first number outside its range, or null when the engine accepts the kit. */
export function findKitProblem(kit: Kit): KitProblem | null {
  for (const number of AS_CHECKED) {
    const value: unknown = numberIn(kit, number);
    if (!isWithin(number.range, value)) {
      return { quantity: number.path, value, range: number.range };
    }
  }
  return null;
}
