import type { RestZone } from '../engine/goal/scene';
import type { KitSpread } from '../engine/kit/kit-spread';
import { isWithin } from '../engine/numerics/range';
import type { StrokeProfile } from '../engine/room/stroke-profile';
import { type DoorRefusal, isRefusal, notTaken } from './door-refusal';
import { type Fields, isFields } from './json-fields';
import { type GivenPlay, parsePlay } from './options-play';
import { kitNames, STROKE_NAMES } from './parse-request';
import { parseKitSd, parsePlayer } from './parse-room';
import { type GivenTable, parseGivenTable, TABLE_NAMES } from './play-given';
import type { KnownNames } from './unknown-names';

/** A position, what to play from it, and by whom with what. */
export interface OptionsRequest extends GivenTable {
  readonly play: GivenPlay;
  readonly spread: KitSpread;
  readonly profile: StrokeProfile;
  readonly zone: RestZone | null;
  readonly most: number;
}

/** Every name of a request, and of the objects in it. */
export const OPTIONS_NAMES: KnownNames = {
  '': [
    'id',
    'table',
    'balls',
    'play',
    'legal',
    'kinds',
    'order',
    'kit',
    'kitSd',
    'stroke',
    'made',
    'zone',
    'most',
  ],
  ...TABLE_NAMES,
  play: ['ball', 'pocket'],
  zone: ['xM', 'yM', 'radiusM'],
  stroke: STROKE_NAMES,
  ...kitNames(''),
};

const USUAL_WAYS = 12;
const MOST_WAYS = 24;

/** Reads one request, or tells why it cannot be taken. */
export function parseOptions(fields: Fields): OptionsRequest | DoorRefusal {
  const given = parseGivenTable(fields);
  if (isRefusal(given)) return given;
  const play = parsePlay(fields, given.shape);
  if (isRefusal(play)) return play;
  const spread = parseKitSd(fields, given.kit);
  if (isRefusal(spread)) return spread;
  const player = parsePlayer(fields, given.kit, spread);
  if (isRefusal(player)) return player;
  const zone = parseZone(fields.zone);
  if (zone !== null && isRefusal(zone)) return zone;
  const { most = USUAL_WAYS } = fields;
  if (!Number.isInteger(most) || !isWithin({ min: 1, max: MOST_WAYS }, most)) {
    return notTaken('most', `a whole number from 1 to ${MOST_WAYS}`);
  }
  const { profile, spread: chanceSpread } = player;
  return { ...given, play, spread: chanceSpread, profile, zone, most };
}

const ZONE_WORDS = 'an object with xM, yM and a radiusM from 0.01 to 2';

function parseZone(given: unknown): RestZone | null | DoorRefusal {
  if (given === undefined) return null;
  if (!isFields(given)) return notTaken('zone', ZONE_WORDS);
  const { xM, yM, radiusM } = given;
  const isFine =
    typeof xM === 'number' && typeof yM === 'number' && isWithin({ min: 0.01, max: 2 }, radiusM);
  return isFine ? { xM, yM, radiusM } : notTaken('zone', ZONE_WORDS);
}
