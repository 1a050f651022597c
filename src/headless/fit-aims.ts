import type { Shot } from '../engine/direct/shot';
import { solveAim } from '../engine/direct/solve-aim';
import type { Kit } from '../engine/kit/kit';
import { RAD_PER_DEG } from '../engine/numerics/angle';
import { type DoorRefusal, notTaken, refusedAt, worded } from './door-refusal';
import { isFields } from './json-fields';
import { shotFrom } from './parse-request';

const MOST_AIMS = 50;
/** Invented: two shots of a player who uses side. */
const USUAL_AIMS: readonly Shot[] = [
  {
    distanceM: 1.2,
    cutRad: 20 * RAD_PER_DEG,
    side: -0.3,
    height: 0,
    elevationRad: 4 * RAD_PER_DEG,
    speedMps: 1.5,
  },
  {
    distanceM: 0.8,
    cutRad: 35 * RAD_PER_DEG,
    side: 0.3,
    height: 0,
    elevationRad: 4 * RAD_PER_DEG,
    speedMps: 2.5,
  },
];

/** The shots whose aims a fit should serve, or why one of them cannot be made with this kit. */
export function parseAims(given: unknown, kit: Kit): readonly Shot[] | DoorRefusal {
  if (given === undefined) return USUAL_AIMS;
  if (!Array.isArray(given) || given.length === 0 || given.length > MOST_AIMS) {
    return notTaken('aims', `a list of 1 to ${MOST_AIMS} shots`);
  }
  const aims: Shot[] = [];
  for (const [index, one] of given.entries()) {
    const at = `aims[${index}]`;
    if (!isFields(one)) return notTaken(at, 'an object');
    const shot = shotFrom(one);
    const result = solveAim(shot, kit);
    if (!result.ok) return refusedAt(at, worded(result));
    aims.push(shot);
  }
  return aims;
}
