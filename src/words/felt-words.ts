import type { FeltName } from '../units/felt-figures';
import * as shown from '../units/kit-units';

/** What a figure that a player can see is called, and how it is shown. */
export interface FeltWords {
  readonly label: string;
  /** What is told beside the figure alone: "42 mm squirt". */
  readonly short: string;
  /** How it comes about and what more of it means; `speed` writes one in the unit chosen. */
  readonly hint: (speed: (key: 'soft' | 'medium' | 'firm') => string) => string;
  readonly shownIn: shown.ShownOnTable;
}

export const FELT_WORDS: { readonly [N in FeltName]: FeltWords } = {
  squirt: {
    label: 'Squirt over a table length',
    short: 'squirt',
    hint: () =>
      'How far off the cue’s line the ball is after a table length, the cue shifted half its tip’s width from the centre. Less is a lower-squirt cue.',
    shownIn: shown.ASIDE,
  },
  pivot: {
    label: 'Pivot length',
    short: 'pivot',
    hint: () =>
      'The bridge from which a cue turned to a little side still sends the ball straight. Longer goes with less squirt: both write one number.',
    shownIn: shown.BRIDGE,
  },
  run: {
    label: 'Run of a ball',
    short: 'run',
    hint: (speed) =>
      `How far a ball goes that rolls off at ${speed('medium')}, no cushion in its way. More is a faster cloth.`,
    shownIn: shown.IN_LENGTHS,
  },
  draw: {
    label: 'How far draw lasts',
    short: 'of draw',
    hint: (speed) =>
      `How far a ball at ${speed('firm')}, struck half-way down from the centre, keeps its backspin. Further is a slicker cloth.`,
    shownIn: shown.ALONG,
  },
  throw: {
    label: 'Throw',
    short: 'throw',
    hint: (speed) =>
      `How far a sliding ball at ${speed('soft')} drags the other off line on a quarter-ball hit. Dirty balls throw more.`,
    shownIn: shown.THROWN,
  },
  rebound: {
    label: 'Speed off a cushion',
    short: 'off a cushion',
    hint: (speed) =>
      `What a ball that rolls in squarely at ${speed('medium')} rolls back with. More is a livelier rail.`,
    shownIn: shown.PERCENT,
  },
};
