/** Every reason for which a door may refuse to answer about a shot. */
export const REFUSAL_REASONS = [
  'malformed',
  'out-of-range',
  'beyond-miscue-limit',
  'never-stops',
  'stops-short',
  'curves-away',
  'too-thin',
  'flies-over',
  'misses',
  'object-ball-cannot-reach',
  'no-convergence',
];
