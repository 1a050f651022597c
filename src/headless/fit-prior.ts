import type { StrokeScatter } from '../engine/fit/fit-question';
import type { Kit } from '../engine/kit/kit';
import type { KitSpread } from '../engine/kit/kit-spread';
import { RAD_PER_DEG } from '../engine/numerics/angle';
import { isWithin } from '../engine/numerics/range';
import { checkKit } from './check-kit';
import { type DoorRefusal, isRefusal, notTaken, refusedAt, span, worded } from './door-refusal';
import { type Fields, isFields } from './json-fields';
import { kitFrom } from './parse-request';
import { parseKitSd, parseStroke } from './parse-room';

/** A kit before anything was measured, whoever owns its parts. */
export interface PlainPrior {
  readonly kit: Kit;
  readonly spread: KitSpread;
}

/** Beyond this, m/m_e, nobody could tell one cue from another. */
const MASS_RATIO = { min: 2, max: 1e6 };

/** What was known before: an ordinary kit, little known, where nothing is told. */
export function parsePrior(given: unknown): PlainPrior | DoorRefusal {
  if (given !== undefined && !isFields(given)) return notTaken('prior', 'an object');
  const kit = kitFrom(given?.kit);
  const problem = checkKit(kit);
  if (problem !== null) return refusedAt('prior', worded(problem));
  if (!isWithin(MASS_RATIO, kit.massRatio)) {
    return notTaken('prior.kit', `of a cue whose massRatio is ${span(MASS_RATIO)}`);
  }
  const spread = parseKitSd(given ?? {}, kit);
  return 'ok' in spread ? refusedAt('prior', spread) : { kit, spread };
}

/** More scatter than the straight lines of a fit can bear, in the request's units. */
const MOST_SCATTER = 'directionDeg to 10, speedShare to 0.5, tipM to 0.01, elevationDeg to 10';
/** The player's scatter: the invented club player's where nothing is told. */
export function parseScatter(fields: Fields): StrokeScatter | DoorRefusal {
  const profile = parseStroke(fields);
  if (isRefusal(profile)) return profile;
  const { directionRad, speedShare, tipM, elevationRad } = profile;
  const isFine =
    directionRad <= 10 * RAD_PER_DEG &&
    speedShare <= 0.5 &&
    tipM <= 0.01 &&
    elevationRad <= 10 * RAD_PER_DEG;
  if (isFine) return { directionRad, speedShare, tipM, elevationRad };
  return notTaken('stroke', `within what a fit can bear: ${MOST_SCATTER}`, `Give ${MOST_SCATTER}.`);
}
