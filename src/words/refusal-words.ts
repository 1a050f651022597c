import type { Refusal, RefusalReason, Shot } from '../engine/direct/shot';
import type { NoShot } from '../engine/goal/position-shot';
import type { BallName } from '../engine/lie/position';
import { DEG_PER_RAD } from '../engine/numerics/angle';
import type { Range } from '../engine/numerics/range';
import { MOST_BALLS } from '../engine/table/most-balls';
import type { TableRefusal } from '../engine/table/table-play';

/** What is said where there is no answer. */
export interface Wording {
  /** Why, in one plain sentence. */
  readonly message: string;
  /** What would help. */
  readonly remedy: string;
}

/** Refusals that need no figure. */
const PLAIN: Readonly<Record<Exclude<RefusalReason, 'out-of-range'>, Wording>> = {
  'beyond-miscue-limit': {
    message: 'The tip would slip off: this contact is more than half a radius from the centre.',
    remedy: 'Strike nearer the centre: side and height together within half a radius.',
  },
  'never-stops': {
    message: 'On this bed a rolling ball never stops: it tilts more than the cloth holds.',
    remedy: 'Enter less slope, or more roll friction.',
  },
  'stops-short': {
    message: 'The cue ball comes to rest before it can make this contact.',
    remedy: 'Play firmer, or from nearer.',
  },
  'curves-away': {
    message: 'The cue ball curves away before it can make this contact.',
    remedy: 'Lower the cue, use less side, or play firmer.',
  },
  'too-thin': {
    message: 'The cut is too thin: no aim sends the object ball that way with any pace.',
    remedy: 'Choose a fuller cut, or a different ball or pocket.',
  },
  'flies-over': {
    message: 'The cue ball is in the air where it should meet the object ball, and flies over it.',
    remedy: 'Lower the cue, or play softer.',
  },
  misses: {
    message: 'At this aim the cue ball does not touch the object ball.',
    remedy: 'Turn the aim towards the object ball.',
  },
  'object-ball-cannot-reach': {
    message: 'The object ball comes to rest before it gets there.',
    remedy: 'Play firmer, or choose a fuller cut.',
  },
  'no-convergence': {
    message: 'The search for an aim did not settle for exactly these values.',
    remedy: 'Change speed or distance a little: the cue ball may be landing just at contact.',
  },
};

interface Named {
  readonly name: string;
  readonly unit: string;
  /** From SI to the unit. */
  readonly scale: number;
}

const DEGREES = { unit: '°', scale: DEG_PER_RAD };

const INPUTS: Readonly<Record<keyof Shot | 'aimRad', Named>> = {
  distanceM: { name: 'Distance', unit: ' m', scale: 1 },
  cutRad: { name: 'Cut', ...DEGREES },
  side: { name: 'Side', unit: ' of the radius', scale: 1 },
  height: { name: 'Height', unit: ' of the radius', scale: 1 },
  elevationRad: { name: 'Cue elevation', ...DEGREES },
  speedMps: { name: 'Speed', unit: ' m/s', scale: 1 },
  objectDistanceM: { name: 'The object ball’s distance', unit: ' m', scale: 1 },
  aimRad: { name: 'Aim', ...DEGREES },
};

const OF_A_TARGET: Readonly<Record<string, Named>> = {
  distanceM: { name: 'The target’s distance', unit: ' m', scale: 1 },
  mouthM: { name: 'The mouth', unit: ' m', scale: 1 },
  halfAngleRad: { name: 'The target’s half angle', ...DEGREES },
};

/** Why an aim cannot be had or played, and what would help. */
export function refusalWords({ reason, field, quantity = '', range }: Refusal): Wording {
  if (reason !== 'out-of-range') return PLAIN[reason];
  const { min, max } = range ?? { min: Number.NaN, max: Number.NaN };
  if (field === 'kit') {
    const span = max < Number.POSITIVE_INFINITY ? `from ${min} to ${max}` : `at least ${min}`;
    const message = `${quantity} of the kit must be a number ${span}.`;
    return { message, remedy: `Give it a value ${span}.` };
  }
  if (field === 'target' || field === undefined) {
    const named = OF_A_TARGET[quantity] ?? { name: quantity, unit: '', scale: 1 };
    const span = spanOf({ min, max }, named, 4);
    return { message: `${named.name} must be ${span}.`, remedy: `Give a value ${span}.` };
  }
  const span = spanOf({ min, max }, INPUTS[field], 6);
  const message = `${INPUTS[field].name} must be a number ${span}.`;
  return { message, remedy: `Give a value ${span}.` };
}

function spanOf({ min, max }: Range, { unit, scale }: Named, digits: number): string {
  const tidy = (value: number) => Number((value * scale).toPrecision(digits));
  return `from ${tidy(min)} to ${tidy(max)}${unit}`;
}

const LAY_APART = 'Lay the balls at least a ball’s width apart.';
const LAY_FREE = 'Lay every ball on the bed, clear of cushions and holes.';

/** Why a position makes no shot, and what would help. */
export function noShotWords({ reason, ball = 'cue' }: NoShot): Wording {
  switch (reason) {
    case 'no-cue-ball':
      return {
        message: 'There is no cue ball on the table.',
        remedy: 'Give a ball named "cue".',
      };
    case 'no-such-ball':
      return {
        message: `There is no ball ${ball} on the table.`,
        remedy: 'Play a ball that is on the table.',
      };
    case 'overlap':
      return { message: `${called(ball)} lies in the place of another.`, remedy: LAY_APART };
    case 'off-bed':
      return { message: `${called(ball)} does not lie free on the bed.`, remedy: LAY_FREE };
    case 'too-thin':
      return {
        message: 'The cut is over 87°: no direct shot sends it that way.',
        remedy: 'Choose another ball or pocket, or lay the cue ball elsewhere.',
      };
    case 'pocket-closed':
      return {
        message: 'From there the ball does not go past the points of that pocket.',
        remedy: 'Choose another pocket.',
      };
  }
}

function called(ball: BallName): string {
  return ball === 'cue' ? 'The cue ball' : `Ball ${ball}`;
}

/** Why a stroke cannot be played on a table, and what would help. */
export function tableRefusalWords({ reason, quantity, ball }: TableRefusal): Wording {
  switch (reason) {
    case 'out-of-range':
      return {
        message: `${quantity} is out of range.`,
        remedy: 'Give a value that the engine takes.',
      };
    case 'beyond-miscue-limit':
      return {
        message: 'The tip would slip off the ball.',
        remedy: PLAIN['beyond-miscue-limit'].remedy,
      };
    case 'never-stops':
      return {
        message: 'On this bed a ball would roll for ever.',
        remedy: PLAIN['never-stops'].remedy,
      };
    case 'no-balls':
      return {
        message: `There must be from 1 to ${MOST_BALLS} balls.`,
        remedy: 'Give fewer balls, the cue ball among them.',
      };
    case 'off-bed':
      return { message: `Ball ${ball} does not lie free on the bed.`, remedy: LAY_FREE };
    case 'overlap':
      return { message: `Ball ${ball} lies in the place of another.`, remedy: LAY_APART };
  }
}

/** What would help where no other speed does, for refusals whose remedy speaks of speed. */
const BESIDE_SPEED: { readonly [R in RefusalReason]?: string } = {
  'stops-short': 'No speed gets it there: play from nearer, a fuller cut, or to a nearer pocket.',
  'curves-away': 'No speed alone does it: lower the cue, or use less side.',
  'flies-over': 'No speed alone does it: lower the cue.',
};

/** What would help: another speed only where one was found at which the ball goes. */
export function remedyWords(refusal: Refusal, speed: number | null): string {
  return (speed === null && BESIDE_SPEED[refusal.reason]) || refusalWords(refusal).remedy;
}
