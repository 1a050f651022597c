import type { UnitFacts } from './unit-facts';

/** Tip contact, side or height, as a fraction of the ball's radius. */
export const TIP_CONTACT: UnitFacts = {
  symbol: 'R',
  name: 'radii of the ball',
  spaced: true,
  fineStep: 0.02,
  coarseStep: 0.1,
  decimals: 2,
  leastDecimals: 0,
  eighths: true,
};
