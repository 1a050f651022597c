import type { UnitFacts } from '../units/unit-facts';

function plain(symbol: string, name: string, decimals: number, fineStep: number): UnitFacts {
  return {
    symbol,
    name,
    spaced: symbol !== '',
    fineStep,
    coarseStep: fineStep * 10,
    decimals,
    leastDecimals: 0,
    eighths: false,
  };
}

/** How each number of the kit is written and nudged. */
export const RATIO_OF_TENS = plain('', 'times', 1, 1);
export const MASS_RATIO = plain('', 'times', 3, 0.005);
export const MILLIMETRES = plain('mm', 'millimetres', 2, 0.1);
export const BALL_MILLIMETRES = plain('mm', 'millimetres', 3, 0.05);
export const METRES = plain('m', 'metres', 3, 0.01);
export const SLOPE = plain('mm per m', 'millimetres a metre', 2, 0.1);
export const FRICTION = plain('', 'coefficient', 3, 0.01);
export const ROLL_FRICTION = plain('', 'coefficient', 4, 0.0005);
export const BALL_FRICTION = plain('', 'coefficient', 5, 0.001);
export const PER_SPEED = plain('s/m', 'seconds a metre', 3, 0.05);
export const SHARE = plain('', 'share', 3, 0.01);
export const SPIN_DECAY = plain('rad/s²', 'radians a second, each second', 1, 1);
