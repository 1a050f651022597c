import type { Refusal, RefusalField, RefusalReason } from './shot';

interface Wording {
  readonly message: string;
  readonly remedy: string;
}

/** The words of each refusal that needs no figure in them. */
const WORDING: Readonly<Record<Exclude<RefusalReason, 'out-of-range'>, Wording>> = {
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

/** A refusal in its standard words. */
export function refusal(reason: keyof typeof WORDING, field?: RefusalField): Refusal {
  const words = { ok: false, reason, ...WORDING[reason] } as const;
  return field === undefined ? words : { ...words, field };
}

/** An input that the engine does not take, with what it does. */
export function outOfRange(field: RefusalField, message: string, remedy: string): Refusal {
  return { ok: false, reason: 'out-of-range', message, remedy, field };
}
