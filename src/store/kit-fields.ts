import { BALL_FRICTION_RANGES, BED_SLOPE_RANGE } from '../engine/model/kit-ranges';
import type { Range } from '../engine/model/range';
import type { UnitFacts } from '../units/unit-facts';
import * as shown from './kit-field-units';
import { BALL_RANGES, CLOTH_RANGES, CUE_RANGES, TABLE_RANGES } from './record-ranges';
import type { ShelfName } from './records';

/** A number of a record that a person can read and change. */
export interface KitField {
  /** Dotted where nested: `ballFriction.a`. */
  readonly path: string;
  readonly label: string;
  /** What a larger number does, in one line. */
  readonly hint: string;
  /** Accepted values, in SI. */
  readonly range: Range;
  readonly facts: UnitFacts;
  /** Shown figure for one SI unit. */
  readonly shownPerSi: number;
}

export const KIT_FIELDS = {
  cues: [
    {
      path: 'massRatio',
      label: 'Ball over end mass',
      hint: 'Higher is a lighter front end, and less squirt.',
      range: CUE_RANGES.massRatio,
      facts: shown.RATIO_OF_TENS,
      shownPerSi: 1,
    },
    {
      path: 'tipDiameterM',
      label: 'Tip diameter',
      hint: 'Straight across the tip.',
      range: CUE_RANGES.tipDiameterM,
      facts: shown.MILLIMETRES,
      shownPerSi: 1000,
    },
    {
      path: 'tipRadiusM',
      label: 'Tip dome radius',
      hint: 'Radius of the coin whose curve fits the tip.',
      range: CUE_RANGES.tipRadiusM,
      facts: shown.MILLIMETRES,
      shownPerSi: 1000,
    },
  ],
  cloths: [
    {
      path: 'slideFriction',
      label: 'Sliding friction',
      hint: 'Higher bends the path sooner and takes draw off faster.',
      range: CLOTH_RANGES.slideFriction,
      facts: shown.FRICTION,
      shownPerSi: 1,
    },
    {
      path: 'rollFriction',
      label: 'Rolling friction',
      hint: 'Higher is a slower cloth.',
      range: CLOTH_RANGES.rollFriction,
      facts: shown.ROLL_FRICTION,
      shownPerSi: 1,
    },
    {
      path: 'spinDecayRadS2',
      label: 'Sidespin loss',
      hint: 'Higher wears sidespin off sooner.',
      range: CLOTH_RANGES.spinDecayRadS2,
      facts: shown.SPIN_DECAY,
      shownPerSi: 1,
    },
    {
      path: 'bedRestitution',
      label: 'Bounce off the bed',
      hint: 'Share of its downward speed a ball comes back with.',
      range: CLOTH_RANGES.bedRestitution,
      facts: shown.SHARE,
      shownPerSi: 1,
    },
  ],
  balls: [
    {
      path: 'ballRadiusM',
      label: 'Ball radius',
      hint: 'Half the diameter.',
      range: BALL_RANGES.ballRadiusM,
      facts: shown.BALL_MILLIMETRES,
      shownPerSi: 1000,
    },
    {
      path: 'ballRestitution',
      label: 'Bounce between balls',
      hint: 'Share of its approach speed with which a ball leaves another.',
      range: BALL_RANGES.ballRestitution,
      facts: shown.SHARE,
      shownPerSi: 1,
    },
    {
      path: 'ballFriction.a',
      label: 'Friction when fast',
      hint: 'Higher throws more at every speed.',
      range: BALL_FRICTION_RANGES.a,
      facts: shown.BALL_FRICTION,
      shownPerSi: 1,
    },
    {
      path: 'ballFriction.b',
      label: 'Extra friction when slow',
      hint: 'Higher throws more on soft shots.',
      range: BALL_FRICTION_RANGES.b,
      facts: shown.BALL_FRICTION,
      shownPerSi: 1,
    },
    {
      path: 'ballFriction.c',
      label: 'How soon the extra fades',
      hint: 'Higher keeps throw to the softest shots.',
      range: BALL_FRICTION_RANGES.c,
      facts: shown.PER_SPEED,
      shownPerSi: 1,
    },
    {
      path: 'cueBallMassRatio',
      label: 'Cue ball over object ball',
      hint: 'Mass of the cue ball over that of the others.',
      range: BALL_RANGES.cueBallMassRatio,
      facts: shown.MASS_RATIO,
      shownPerSi: 1,
    },
  ],
  tables: [
    {
      path: 'lengthM',
      label: 'Length',
      hint: 'Cushion nose to cushion nose.',
      range: TABLE_RANGES.lengthM,
      facts: shown.METRES,
      shownPerSi: 1,
    },
    {
      path: 'widthM',
      label: 'Width',
      hint: 'Cushion nose to cushion nose.',
      range: TABLE_RANGES.widthM,
      facts: shown.METRES,
      shownPerSi: 1,
    },
    {
      path: 'bedSlope.alongM_per_M',
      label: 'Slope along the shot',
      hint: 'More than 0 where the bed falls away from you.',
      range: BED_SLOPE_RANGE,
      facts: shown.SLOPE,
      shownPerSi: 1000,
    },
    {
      path: 'bedSlope.rightM_per_M',
      label: 'Slope to the right',
      hint: 'More than 0 where the bed falls to your right.',
      range: BED_SLOPE_RANGE,
      facts: shown.SLOPE,
      shownPerSi: 1000,
    },
  ],
} as const satisfies { readonly [S in ShelfName]: readonly KitField[] };

/** The dotted name of a number on that shelf. */
export type KitFieldPath<S extends ShelfName> = (typeof KIT_FIELDS)[S][number]['path'];

/** The numbers of a shelf, in the order to show them. */
export function kitFields(shelf: ShelfName): readonly KitField[] {
  return KIT_FIELDS[shelf];
}
