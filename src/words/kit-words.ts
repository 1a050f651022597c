import type { NumberPath } from '../engine/kit/kit-numbers';
import * as shown from '../units/kit-units';

/** What a number of a cue, cloth, ball set or table is called, and how its figure is shown. */
export interface NumberWords {
  readonly label: string;
  /** What a larger number does, in one line. */
  readonly hint: string;
  readonly shownIn: shown.ShownIn;
  /** Whether a tape or a level tells it: then it stands before the engine's own numbers. */
  readonly isOwn?: boolean;
}

/** What a record holds: the engine's numbers, and its own. */
type NamedPath = NumberPath | 'tipDiameterM' | 'lengthM' | 'widthM';

export const NUMBER_WORDS = {
  massRatio: {
    label: 'Ball over end mass',
    hint: 'Higher is a lighter front end, and less squirt.',
    shownIn: shown.RATIO_OF_TENS,
  },
  tipDiameterM: {
    label: 'Tip diameter',
    hint: 'Straight across the tip.',
    shownIn: shown.TIP_SIZE,
    isOwn: true,
  },
  tipRadiusM: {
    label: 'Tip dome radius',
    hint: 'Radius of the coin whose curve fits the tip.',
    shownIn: shown.DOME_SIZE,
    isOwn: true,
  },
  slideFriction: {
    label: 'Sliding friction',
    hint: 'Higher bends the path sooner and takes draw off faster.',
    shownIn: shown.FRICTION,
  },
  rollFriction: {
    label: 'Rolling friction',
    hint: 'Higher is a slower cloth.',
    shownIn: shown.ROLL_FRICTION,
  },
  spinDecayRadS2: {
    label: 'Sidespin loss',
    hint: 'Higher wears sidespin off sooner.',
    shownIn: shown.SPIN_DECAY,
  },
  bedRestitution: {
    label: 'Bounce off the bed',
    hint: 'Share of its downward speed a ball comes back with.',
    shownIn: shown.SHARE,
  },
  ballRadiusM: {
    label: 'Ball diameter',
    hint: 'Straight across a ball.',
    shownIn: shown.ACROSS,
    isOwn: true,
  },
  ballRestitution: {
    label: 'Bounce between balls',
    hint: 'Share of its approach speed with which a ball leaves another.',
    shownIn: shown.SHARE,
  },
  'ballFriction.a': {
    label: 'Friction when fast',
    hint: 'Higher throws more at every speed.',
    shownIn: shown.BALL_FRICTION,
  },
  'ballFriction.b': {
    label: 'Extra friction when slow',
    hint: 'Higher throws more on soft shots.',
    shownIn: shown.BALL_FRICTION,
  },
  'ballFriction.c': {
    label: 'How soon the extra fades',
    hint: 'Higher keeps throw to the softest shots.',
    shownIn: shown.PER_SPEED,
  },
  cueBallMassRatio: {
    label: 'Cue ball over object ball',
    hint: 'Mass of the cue ball over that of the others.',
    shownIn: shown.MASS_RATIO,
  },
  lengthM: {
    label: 'Length',
    hint: 'Cushion nose to cushion nose.',
    shownIn: shown.BED_SIZE,
    isOwn: true,
  },
  widthM: {
    label: 'Width',
    hint: 'Cushion nose to cushion nose.',
    shownIn: shown.BED_SIZE,
    isOwn: true,
  },
  'bedSlope.alongM_per_M': {
    label: 'Slope along the shot',
    hint: 'More than 0 where the bed falls away from you.',
    shownIn: shown.SLOPE,
    isOwn: true,
  },
  'bedSlope.rightM_per_M': {
    label: 'Slope to the right',
    hint: 'More than 0 where the bed falls to your right.',
    shownIn: shown.SLOPE,
    isOwn: true,
  },
  'cushion.restitution': {
    label: 'Cushion bounce',
    hint: 'Higher is a livelier rail.',
    shownIn: shown.SHARE,
  },
  'cushion.lossPerMps': {
    label: 'Cushion loss at speed',
    hint: 'Higher deadens hard shots more.',
    shownIn: shown.PER_SPEED_FINE,
  },
  'cushion.lossFromMps': {
    label: 'Loss starts at',
    hint: 'Speed straight into the rail from which bounce is lost.',
    shownIn: shown.RAIL_SPEED,
  },
  'cushion.friction': {
    label: 'Cushion friction',
    hint: 'Higher lets side and angle bite more on the rail.',
    shownIn: shown.FRICTION,
  },
  'cushion.noseHeight': {
    label: 'Nose height',
    hint: 'Height of the rail’s edge over the bed, in ball radii: measure it with a tape.',
    shownIn: shown.RADII,
  },
} as const satisfies { readonly [P in NamedPath]: NumberWords };
