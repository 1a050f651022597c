import type { Refusal, RefusalReason, Shot } from '../engine/direct/shot';
import { DEG_PER_RAD } from '../engine/numerics/angle';
import type { Range } from '../engine/numerics/range';

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
