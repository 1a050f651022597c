import type { Shot } from '../../src/engine/direct/shot';
import { DEFAULT_KIT, type Kit } from '../../src/engine/kit/kit';
import { normalDraw } from './normal-draw';
import { between, type Random } from './seeded-random';

const RAD = Math.PI / 180;

/** A question to the engine. */
export interface Query {
  readonly shot: Shot;
  readonly kit: Kit;
}

/**
 * A shot a player could mean: 0.15-2 m, cut to 72°, contact to 0.48 R from the centre in any
 * direction, 0-30°, 0.7-5 m/s, each uniform, on a random kit.
 */
export function randomQuery(random: Random, slopeM_per_M = 0): Query {
  const offset = between(random, 0, 0.48);
  const clock = between(random, 0, 2 * Math.PI);
  return {
    shot: {
      distanceM: between(random, 0.15, 2),
      cutRad: between(random, -72, 72) * RAD,
      side: offset * Math.cos(clock),
      height: offset * Math.sin(clock),
      elevationRad: between(random, 0, 30) * RAD,
      speedMps: between(random, 0.7, 5),
    },
    kit: randomKit(random, slopeM_per_M),
  };
}

/**
 * A kit drawn from what tables and cues show: log-normal, the stated range its central 95 %, cut
 * off at twice that spread. Ranges from memory of the literature, like the defaults.
 */
function randomKit(random: Random, slopeM_per_M: number): Kit {
  return {
    ...DEFAULT_KIT,
    massRatio: logNormal(random, 12, 50),
    slideFriction: logNormal(random, 0.15, 0.4),
    rollFriction: logNormal(random, 0.005, 0.016),
    spinDecayRadS2: logNormal(random, 5, 22),
    ballRestitution: Math.min(1, logNormal(random, 0.92, 0.98)),
    bedRestitution: logNormal(random, 0.4, 0.7),
    cueBallMassRatio: logNormal(random, 0.95, 1.1),
    bedSlope: {
      alongM_per_M: between(random, -slopeM_per_M, slopeM_per_M),
      rightM_per_M: between(random, -slopeM_per_M, slopeM_per_M),
    },
  };
}

function logNormal(random: Random, low: number, high: number): number {
  const middle = (Math.log(low) + Math.log(high)) / 2;
  const spread = (Math.log(high) - Math.log(low)) / (2 * 1.96);
  const normal = normalDraw(random);
  return Math.exp(middle + spread * Math.max(-4, Math.min(4, normal)));
}
