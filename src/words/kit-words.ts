import type { NumberPath } from '../engine/kit/kit-numbers';
import type { KitQuantity } from '../engine/kit/kit-spread';
import * as shown from '../units/kit-units';

/** What a number of a cue, cloth, ball set or table is called, and how its figure is shown. */
export interface NumberWords {
  readonly label: string;
  /** What a larger number does, in one line. */
  readonly hint: string;
  readonly shownIn: shown.ShownIn;
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
  },
  tipRadiusM: {
    label: 'Tip dome radius',
    hint: 'Radius of the coin whose curve fits the tip.',
    shownIn: shown.DOME_SIZE,
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
    label: 'Ball radius',
    hint: 'Half the diameter.',
    shownIn: shown.BALL_SIZE,
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
  },
  widthM: {
    label: 'Width',
    hint: 'Cushion nose to cushion nose.',
    shownIn: shown.BED_SIZE,
  },
  'bedSlope.alongM_per_M': {
    label: 'Slope along the shot',
    hint: 'More than 0 where the bed falls away from you.',
    shownIn: shown.SLOPE,
  },
  'bedSlope.rightM_per_M': {
    label: 'Slope to the right',
    hint: 'More than 0 where the bed falls to your right.',
    shownIn: shown.SLOPE,
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

/** What a quantity is called of which little is known. */
export interface QuantityWords {
  /** What it belongs to. */
  readonly thing: string;
  /** What it is, after "the". */
  readonly name: string;
  /** The same as the end of a sentence. */
  readonly yours: string;
  /** Its figure, where a player can picture one: else it is not told. */
  readonly pictured?: { readonly label: string; readonly unit: '' | '°' | 'slope' };
}

export const QUANTITY_WORDS: { readonly [Q in KitQuantity]: QuantityWords } = {
  massRatio: {
    thing: 'cue',
    name: 'cue’s deflection',
    yours: 'your cue’s deflection',
    pictured: { label: 'Squirt at half a radius of side', unit: '°' },
  },
  slideFriction: {
    thing: 'cloth',
    name: 'cloth’s slide friction',
    yours: 'the cloth’s slide friction',
    pictured: { label: 'Slide friction', unit: '' },
  },
  ballFriction: {
    thing: 'balls',
    name: 'friction of the balls',
    yours: 'the friction of the balls',
    pictured: { label: 'Friction of the balls', unit: '' },
  },
  rollFriction: {
    thing: 'cloth',
    name: 'cloth’s roll friction',
    yours: 'the cloth’s roll friction',
    pictured: { label: 'Roll friction', unit: '' },
  },
  spinDecayRadS2: {
    thing: 'cloth',
    name: 'cloth’s loss of side',
    yours: 'how the cloth takes side away',
  },
  ballRestitution: {
    thing: 'balls',
    name: 'bounce of the balls',
    yours: 'the bounce of the balls',
    pictured: { label: 'Bounce of the balls', unit: '' },
  },
  bedRestitution: {
    thing: 'cloth',
    name: 'bounce off the bed',
    yours: 'the bounce off the bed',
  },
  cueBallMassRatio: {
    thing: 'balls',
    name: 'cue ball’s weight',
    yours: 'the cue ball’s weight',
  },
  bedSlopeAlong: {
    thing: 'bed',
    name: 'bed’s tilt along',
    yours: 'the table’s tilt along',
    pictured: { label: 'Falls away from the break end', unit: 'slope' },
  },
  bedSlopeRight: {
    thing: 'bed',
    name: 'bed’s tilt across',
    yours: 'the table’s tilt across',
    pictured: { label: 'Falls to the right', unit: 'slope' },
  },
  cushionRestitution: {
    thing: 'cushions',
    name: 'bounce of the cushions',
    yours: 'the bounce of the cushions',
    pictured: { label: 'Bounce of the cushions', unit: '' },
  },
  cushionFriction: {
    thing: 'cushions',
    name: 'friction of the cushions',
    yours: 'the friction of the cushions',
    pictured: { label: 'Friction of the cushions', unit: '' },
  },
  cushionLoss: {
    thing: 'cushions',
    name: 'cushions’ loss at speed',
    yours: 'what the cushions lose on hard shots',
  },
  cushionLossFrom: {
    thing: 'cushions',
    name: 'start of the cushions’ loss',
    yours: 'from what speed the cushions lose',
  },
};
