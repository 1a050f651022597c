import { solveAim } from '../../../src/engine/direct/solve-aim';
import { type Query, randomQuery } from '../../harness/random-shots';
import { seededRandom } from '../../harness/seeded-random';
import { findAim } from '../reference/find-aim';
import { FINE } from '../reference/play-shot';

const DEG = 180 / Math.PI;
/** Of the object ball's direction, rad. */
const MISS_TOLERANCE = 1e-9;
/** Farther apart than this, degrees, two aims are two ways to play the shot. */
const SAME_WAY_DEG = 0.05;

/** What came of looking for aims twice. */
export interface AimAgreement {
  readonly shots: number;
  /** For each aim the reference found, how far off the engine's nearest is, degrees. */
  readonly apartDeg: readonly number[];
  /** Shots for which the reference found an aim and the engine none like it. */
  readonly overlooked: readonly Query[];
  /** Shots for which only the reference gave up. */
  readonly notFound: number;
}

/** Looks for the aim of random shots, half of them on tilted beds, by playing them. */
export function aimAgreement(): AimAgreement {
  const random = seededRandom(8);
  const shots = 400;
  const apartDeg: number[] = [];
  const overlooked: Query[] = [];
  let notFound = 0;
  for (let count = 0; count < shots; count++) {
    const query = randomQuery(random, count % 2 === 0 ? 0 : 0.002);
    const result = solveAim(query.shot, query.kit);
    const aims = result.ok ? [result.aimRad, ...result.otherAimsRad] : [];
    const found = findAim(query.shot, query.kit, FINE, MISS_TOLERANCE);
    if (found === null) {
      notFound += aims.length > 0 ? 1 : 0;
      continue;
    }
    const apart = Math.min(...aims.map((aim) => Math.abs(aim - found) * DEG));
    if (apart < SAME_WAY_DEG) apartDeg.push(apart);
    else overlooked.push(query);
  }
  return { shots, apartDeg, overlooked, notFound };
}
