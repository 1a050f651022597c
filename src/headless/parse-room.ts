import { checkTarget } from '../engine/goal/check-target';
import type { Target } from '../engine/goal/target';
import type { Kit } from '../engine/kit/kit';
import {
  KIT_QUANTITIES,
  type KitQuantity,
  type KitSpread,
  QUANTITIES,
  quantityIn,
  spreadUnit,
  UNMEASURED,
} from '../engine/kit/kit-spread';
import { RAD_PER_DEG } from '../engine/numerics/angle';
import { isWithin } from '../engine/numerics/range';
import type { StandIn } from '../engine/player/known-profile';
import { questionChances } from '../engine/player/the-question';
import { playerOfMade } from '../engine/player/what-is-known';
import { INVENTED_PROFILES, type StrokeProfile } from '../engine/room/stroke-profile';
import { type DoorRefusal, isRefusal, notTaken, worded } from './door-refusal';
import { type Fields, fieldIn, fieldsOf, numberOf } from './json-fields';

/** What a request may want beside the aim. */
export const WANTS = ['forgives', 'certainty', 'chance'] as const;
export type Want = (typeof WANTS)[number];

/** The wants of a request, or why they cannot be read. */
export function parseWants(fields: Fields): readonly Want[] | DoorRefusal {
  const { want } = fields;
  if (want === undefined) return [];
  const known = (value: unknown): value is Want => WANTS.some((name) => name === value);
  if (Array.isArray(want) && want.every(known)) return want;
  const words = `a list of ${WANTS.join(', ')}`;
  return notTaken('want', words, `Give ${words}, or leave it out.`);
}

/** The target of a request, or why it cannot be had. */
export function parseTarget(fields: Fields, kit: Kit): Target | DoorRefusal {
  const given = fieldsOf(fields.target);
  const target: Target =
    given.halfAngleDeg === undefined
      ? {
          kind: 'mouth',
          distanceM: numberOf(given.distanceM),
          mouthM: numberOf(given.mouthM),
        }
      : { kind: 'angle', halfAngleRad: numberOf(given.halfAngleDeg) * RAD_PER_DEG };
  const problem = checkTarget(target, kit.ballRadiusM);
  return problem === null ? target : worded(problem);
}

/** The player of a request: the invented club player where it says nothing. */
export function parseStroke(fields: Fields): StrokeProfile | DoorRefusal {
  const usual = INVENTED_PROFILES.club;
  const or = (key: string, usually: number, scale = 1) => {
    const field = fieldIn(fields.stroke, key);
    return field === undefined ? usually : numberOf(field) * scale;
  };
  const profile = {
    directionRad: or('directionDeg', usual.directionRad, RAD_PER_DEG),
    speedShare: or('speedShare', usual.speedShare),
    tipM: or('tipM', usual.tipM),
    elevationRad: or('elevationDeg', usual.elevationRad, RAD_PER_DEG),
    together: or('together', usual.together),
  };
  const { together, ...spreads } = profile;
  const fine = Object.values(spreads).every((spread) => spread >= 0 && spread <= 1);
  if (fine && profile.directionRad > 0 && together >= 0 && together <= 1) return profile;
  return told(
    'stroke',
    'give spreads from 0 up, a direction above 0, and together from 0 to 1',
    'Give directionDeg, speedShare, tipM, elevationDeg and together within those, or leave it out.',
  );
}

/** How many of ten a player makes of the question's shot; null where nothing is said. */
export function parseMade({ made }: Fields): number | null | DoorRefusal {
  if (made === undefined) return null;
  if (Number.isInteger(made) && isWithin(TEN, made)) return made;
  return told('made', 'be a whole number from 0 to 10', 'Give how many of ten, or leave it out.');
}

const TEN = { min: 0, max: 10 };

/**
 * The player of a request, and what counts as chance of what is not known of the kit: by how many of
 * ten are made, as for a log of no shots; or by how the stroke scatters.
 */
export function parsePlayer(
  fields: Fields,
  kit: Kit,
  spread: KitSpread,
): Pick<StandIn, 'profile' | 'spread'> | DoorRefusal {
  const of10 = parseMade(fields);
  if (of10 === null) {
    const profile = parseStroke(fields);
    return isRefusal(profile) ? profile : { profile, spread };
  }
  if (typeof of10 !== 'number') return of10;
  if (fields.stroke !== undefined) {
    return told('made', 'stand in the place of stroke', 'Give one of the two.');
  }
  const question = questionChances(kit, spread);
  if (question !== null) return playerOfMade({ question, of10 }, spread);
  return told(
    'made',
    'be of a kit with which the question’s shot has an aim',
    'Give stroke instead.',
  );
}

/**
 * Standard deviations of a request's kit, each in its quantity's own unit, as shares of the values;
 * `ballFriction` is a share already. What is left out is as little known as an unmeasured kit's.
 */
export function parseKitSd(fields: Fields, kit: Kit): KitSpread | DoorRefusal {
  const sds = KIT_QUANTITIES.map((quantity) => {
    const sd = sdGiven(fields.kitSd, quantity);
    if (sd === undefined) return [quantity, UNMEASURED[quantity]];
    return [quantity, numberOf(sd) / spreadUnit(quantity, quantityIn(kit, quantity))];
  });
  const spread = Object.fromEntries(sds) as KitSpread;
  if (Object.values(spread).every((sd) => sd >= 0 && sd <= 2)) return spread;
  return told(
    'kitSd',
    'give standard deviations from 0 to twice the value',
    'Give each in its quantity’s own unit, or leave it out.',
  );
}

/** Told under the name of the quantity, or where its number is nested. */
function sdGiven(kitSd: unknown, quantity: KitQuantity): unknown {
  const [{ key, inner }, another] = QUANTITIES[quantity].numbers;
  const held = fieldIn(kitSd, key);
  return inner === null || another ? held : fieldIn(held, inner);
}

function told(field: string, duty: string, remedy: string): DoorRefusal {
  return { ok: false, reason: 'out-of-range', message: `${field} must ${duty}.`, remedy, field };
}
