import type { KitQuantity } from '../engine/kit/kit-spread';

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
    name: 'cue’s squirt',
    yours: 'your cue’s squirt',
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
