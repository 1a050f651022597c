/** Why a shot that may be asked for cannot be made. */
export const SHOT_REASONS = [
  'beyond-miscue-limit',
  'never-stops',
  'stops-short',
  'curves-away',
  'too-thin',
  'flies-over',
  'misses',
  'object-ball-cannot-reach',
  'no-convergence',
] as const;

/** Every reason for which a door may refuse to answer about a shot. */
export const REFUSAL_REASONS: readonly string[] = ['malformed', 'out-of-range', ...SHOT_REASONS];
