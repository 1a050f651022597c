import type { Kit } from '../kit/kit';
import type { KitSpread } from '../kit/kit-spread';
import { RAD_PER_DEG } from '../numerics/angle';
import { type AskedShot, type ShotLine, shotLine } from './shot-line';

const GAPS_M = [0.35, 0.7, 1.1, 1.6];
const DISTANCES_M = [0.5, 0.9, 1.4];
const CUTS_DEG = [0, 30, -30];
const MOUTH_M = 0.116;

/** A shot to be set up, with its line. */
export interface TestShot extends AskedShot {
  readonly line: ShotLine;
}

/** Shots without side, easy and hard, straight and cut either way, to choose the most telling of. */
export function testShots(kit: Kit, spread: KitSpread): readonly TestShot[] {
  return GAPS_M.flatMap((distanceM) =>
    DISTANCES_M.flatMap((toMouthM) =>
      CUTS_DEG.flatMap((cutDeg): TestShot[] => {
        const shot = {
          distanceM,
          cutRad: cutDeg * RAD_PER_DEG,
          side: 0,
          height: 0,
          elevationRad: 3 * RAD_PER_DEG,
          speedMps: 1.8,
        };
        const asked: AskedShot = {
          shot,
          target: { kind: 'mouth', distanceM: toMouthM, mouthM: MOUTH_M },
          kit,
          spread,
        };
        const line = shotLine(asked);
        return line === null ? [] : [{ ...asked, line }];
      }),
    ),
  );
}
