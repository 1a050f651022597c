import { BALL_FRICTION_RANGES, BED_SLOPE_RANGE } from '../engine/kit/kit-ranges';
import type { Range } from '../engine/numerics/range';
import { DEFAULT_PREFERENCES } from './default-desk';
import * as shown from './kit-field-units';
import { BALL_RANGES, CLOTH_RANGES, CUE_RANGES, TABLE_RANGES } from './record-ranges';
import type { ShelfName } from './records';

/** A number of a record that a person can read and change, in the units that they like. */
export interface KitField extends shown.ShownAs {
  /** Dotted where nested: `ballFriction.a`. */
  readonly path: string;
  readonly label: string;
  /** What a larger number does, in one line. */
  readonly hint: string;
  /** Accepted values, in SI. */
  readonly range: Range;
}

type FieldSpec = Omit<KitField, keyof shown.ShownAs> & { readonly shownIn: shown.ShownIn };

export const KIT_FIELDS = {
  cues: [
    {
      path: 'massRatio',
      label: 'Ball over end mass',
      hint: 'Higher is a lighter front end, and less squirt.',
      range: CUE_RANGES.massRatio,
      shownIn: shown.RATIO_OF_TENS,
    },
    {
      path: 'tipDiameterM',
      label: 'Tip diameter',
      hint: 'Straight across the tip.',
      range: CUE_RANGES.tipDiameterM,
      shownIn: shown.TIP_SIZE,
    },
    {
      path: 'tipRadiusM',
      label: 'Tip dome radius',
      hint: 'Radius of the coin whose curve fits the tip.',
      range: CUE_RANGES.tipRadiusM,
      shownIn: shown.DOME_SIZE,
    },
  ],
  cloths: [
    {
      path: 'slideFriction',
      label: 'Sliding friction',
      hint: 'Higher bends the path sooner and takes draw off faster.',
      range: CLOTH_RANGES.slideFriction,
      shownIn: shown.FRICTION,
    },
    {
      path: 'rollFriction',
      label: 'Rolling friction',
      hint: 'Higher is a slower cloth.',
      range: CLOTH_RANGES.rollFriction,
      shownIn: shown.ROLL_FRICTION,
    },
    {
      path: 'spinDecayRadS2',
      label: 'Sidespin loss',
      hint: 'Higher wears sidespin off sooner.',
      range: CLOTH_RANGES.spinDecayRadS2,
      shownIn: shown.SPIN_DECAY,
    },
    {
      path: 'bedRestitution',
      label: 'Bounce off the bed',
      hint: 'Share of its downward speed a ball comes back with.',
      range: CLOTH_RANGES.bedRestitution,
      shownIn: shown.SHARE,
    },
  ],
  balls: [
    {
      path: 'ballRadiusM',
      label: 'Ball radius',
      hint: 'Half the diameter.',
      range: BALL_RANGES.ballRadiusM,
      shownIn: shown.BALL_SIZE,
    },
    {
      path: 'ballRestitution',
      label: 'Bounce between balls',
      hint: 'Share of its approach speed with which a ball leaves another.',
      range: BALL_RANGES.ballRestitution,
      shownIn: shown.SHARE,
    },
    {
      path: 'ballFriction.a',
      label: 'Friction when fast',
      hint: 'Higher throws more at every speed.',
      range: BALL_FRICTION_RANGES.a,
      shownIn: shown.BALL_FRICTION,
    },
    {
      path: 'ballFriction.b',
      label: 'Extra friction when slow',
      hint: 'Higher throws more on soft shots.',
      range: BALL_FRICTION_RANGES.b,
      shownIn: shown.BALL_FRICTION,
    },
    {
      path: 'ballFriction.c',
      label: 'How soon the extra fades',
      hint: 'Higher keeps throw to the softest shots.',
      range: BALL_FRICTION_RANGES.c,
      shownIn: shown.PER_SPEED,
    },
    {
      path: 'cueBallMassRatio',
      label: 'Cue ball over object ball',
      hint: 'Mass of the cue ball over that of the others.',
      range: BALL_RANGES.cueBallMassRatio,
      shownIn: shown.MASS_RATIO,
    },
  ],
  tables: [
    {
      path: 'lengthM',
      label: 'Length',
      hint: 'Cushion nose to cushion nose.',
      range: TABLE_RANGES.lengthM,
      shownIn: shown.BED_SIZE,
    },
    {
      path: 'widthM',
      label: 'Width',
      hint: 'Cushion nose to cushion nose.',
      range: TABLE_RANGES.widthM,
      shownIn: shown.BED_SIZE,
    },
    {
      path: 'bedSlope.alongM_per_M',
      label: 'Slope along the shot',
      hint: 'More than 0 where the bed falls away from you.',
      range: BED_SLOPE_RANGE,
      shownIn: shown.SLOPE,
    },
    {
      path: 'bedSlope.rightM_per_M',
      label: 'Slope to the right',
      hint: 'More than 0 where the bed falls to your right.',
      range: BED_SLOPE_RANGE,
      shownIn: shown.SLOPE,
    },
  ],
} as const satisfies { readonly [S in ShelfName]: readonly FieldSpec[] };

/** The dotted name of a number on that shelf. */
export type KitFieldPath<S extends ShelfName> = (typeof KIT_FIELDS)[S][number]['path'];

/** The numbers of a shelf, in the order to show them. */
export function kitFields(
  shelf: ShelfName,
  units: shown.KitUnits = DEFAULT_PREFERENCES,
): readonly KitField[] {
  return KIT_FIELDS[shelf].map(({ shownIn, ...field }) => ({ ...field, ...shownIn(units) }));
}
