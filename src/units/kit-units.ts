import { DISTANCE_UNITS, distanceInM } from './distance-unit';
import { SLOPE_UNITS } from './slope-unit';
import type { UnitFacts } from './unit-facts';
import type { DistanceUnit, LengthUnit } from './unit-names';

/** How a number of the kit is written and nudged, and the figure shown for one SI unit. */
export interface ShownAs {
  readonly facts: UnitFacts;
  readonly shownPerSi: number;
}

/** The units a person likes, as far as numbers of the kit go by them. */
export interface KitUnits {
  readonly lengthUnit: LengthUnit;
  readonly distanceUnit: DistanceUnit;
}
export type ShownIn = (units: KitUnits) => ShownAs;
/** @param tableLengthM nose to nose, of the table in play */
export type ShownOnTable = (units: KitUnits, tableLengthM: number) => ShownAs;

function plain(
  symbol: string,
  name: string,
  decimals: number,
  fineStep: number,
  shownPerSi = 1,
): ShownAs {
  const facts = {
    symbol,
    name,
    spaced: symbol !== '' && symbol !== '°',
    fineStep,
    coarseStep: fineStep * 10,
    decimals,
    leastDecimals: 0,
    eighths: false,
  };
  return { facts, shownPerSi };
}

function whateverTheUnits(...as: Parameters<typeof plain>): ShownIn {
  const shown = plain(...as);
  return () => shown;
}

export const RATIO_OF_TENS = whateverTheUnits('', 'times', 1, 1);
export const MASS_RATIO = whateverTheUnits('', 'times', 3, 0.005);
/** Tips are sold by the millimetre everywhere (common practice, no source). */
export const TIP_SIZE = whateverTheUnits('mm', 'millimetres', 2, 0.1, 1000);
export const FRICTION = whateverTheUnits('', 'coefficient', 3, 0.01);
export const ROLL_FRICTION = whateverTheUnits('', 'coefficient', 4, 0.0005);
export const BALL_FRICTION = whateverTheUnits('', 'coefficient', 5, 0.001);
/** Per m/s, whatever speeds are told in: a coefficient of the engine's own law. */
export const PER_SPEED = whateverTheUnits('s/m', 'seconds a metre', 3, 0.05);
export const PER_SPEED_FINE = whateverTheUnits('s/m', 'seconds a metre', 3, 0.005);
/** In m/s, whatever speeds are told in: it goes with the figure before it. */
export const RAIL_SPEED = whateverTheUnits('m/s', 'metres a second', 2, 0.1);
export const RADII = whateverTheUnits('R', 'radii', 3, 0.01);
export const SHARE = whateverTheUnits('', 'share', 3, 0.01);
export const SPIN_DECAY = whateverTheUnits('rad/s²', 'radians a second, each second', 1, 1);

const PER_INCH = 1 / 0.0254;

/** A small length, by its decimals and finest step in mm. */
function small(decimals: number, fineStep: number): ShownIn {
  const sizes = {
    mm: plain('mm', 'millimetres', decimals, fineStep, 1000),
    cm: plain('cm', 'centimetres', decimals + 1, fineStep / 10, 100),
    in: plain('in', 'inches', decimals + 1, fineStep / 25, PER_INCH),
  };
  return ({ lengthUnit }) => sizes[lengthUnit];
}

/** Of a ball, whose radius is kept and whose diameter is told. */
export const ACROSS: ShownIn = (units) => {
  const { facts, shownPerSi } = small(2, 0.1)(units);
  return { facts, shownPerSi: 2 * shownPerSi };
};
export const DOME_SIZE = small(2, 0.1);

const IN_METRES = plain('m', 'metres', 3, 0.01);
const IN_CENTIMETRES = plain('cm', 'centimetres', 1, 1, 100);
const IN_INCHES = plain('in', 'inches', 2, 0.5, PER_INCH);
/** A table's size, which cannot be told in diamonds or lengths of itself. */
export const BED_SIZE: ShownIn = ({ lengthUnit, distanceUnit }) => {
  if (distanceUnit === 'in' || lengthUnit === 'in') return IN_INCHES;
  return distanceUnit === 'cm' ? IN_CENTIMETRES : IN_METRES;
};

export const SLOPE: ShownIn = ({ lengthUnit }) => {
  const { facts, perSi } = SLOPE_UNITS[lengthUnit];
  return { facts, shownPerSi: perSi };
};

/** Sideways over a table length. */
export const ASIDE: ShownOnTable = small(0, 1);

/** From the ball back to the hand. */
export const BRIDGE: ShownOnTable = ({ lengthUnit }) => (lengthUnit === 'in' ? HAND_IN : HAND_CM);
const HAND_CM = plain('cm', 'centimetres', 1, 1, 100);
const HAND_IN = plain('in', 'inches', 1, 0.5, PER_INCH);

export const IN_LENGTHS: ShownOnTable = (_, tableLengthM) =>
  plain('lengths', 'table lengths', 1, 0.1, 1 / tableLengthM);

/** A stretch of the table, as distances are told. */
export const ALONG: ShownOnTable = ({ distanceUnit }, tableLengthM) => ({
  facts: DISTANCE_UNITS[distanceUnit],
  shownPerSi: 1 / distanceInM(1, distanceUnit, tableLengthM),
});

export const THROWN = whateverTheUnits('°', 'degrees', 1, 0.1, 180 / Math.PI);
export const PERCENT = whateverTheUnits('%', 'per cent', 1, 0.5, 100);
