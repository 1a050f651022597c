/**
 * What players call a speed of the cue ball off the tip, softest first, and from how many m/s on
 * (common practice, no source). The one table of such words: all others go by it.
 */
export const SPEED_FROM_MPS = {
  touch: 0,
  soft: 0.5,
  medium: 1,
  firm: 2,
  power: 3,
  break: 4.5,
} as const;
