import type { UnitFacts } from './unit-facts';

/** Cue elevation, and any angle that is read rather than set. */
export const DEGREES: UnitFacts = {
  symbol: '°',
  name: 'degrees',
  spaced: false,
  fineStep: 0.5,
  coarseStep: 2,
  decimals: 1,
  leastDecimals: 0,
  eighths: false,
};

/** An angle in rad, in degrees. The sign is kept. */
export function degreesOf(angleRad: number): number {
  return (angleRad * 180) / Math.PI;
}

/** An angle in degrees, in rad. The sign is kept. */
export function radOf(angleDeg: number): number {
  return (angleDeg * Math.PI) / 180;
}
