import { checkQuery } from '../engine/direct/check-query';
import type { Refusal, Shot } from '../engine/direct/shot';
import type { Kit } from '../engine/kit/kit';

/** A shot that any kit takes, for whatever is wrong with the kit alone. */
const ANY_SHOT: Shot = {
  distanceM: 1,
  cutRad: 0,
  side: 0,
  height: 0,
  elevationRad: 0,
  speedMps: 1,
};

/** Why the engine cannot take a kit, or null where it can. */
export function checkKit(kit: Kit): Refusal | null {
  return checkQuery(ANY_SHOT, kit);
}
