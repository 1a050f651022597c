import type { TrialBed } from '../../engine/fit/trials/trial';
import type { Records } from './parts-played';

/** The table in play, with the balls in play on it. */
export function trialBedOf({ tables, balls }: Pick<Records, 'tables' | 'balls'>): TrialBed {
  return { lengthM: tables.lengthM, ballRadiusM: balls.ballRadiusM };
}
