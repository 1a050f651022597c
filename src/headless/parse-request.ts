import type { Shot } from '../engine/direct/shot';
import { DEFAULT_KIT, type Kit } from '../engine/kit/kit';
import { RAD_PER_DEG } from '../engine/numerics/angle';
import { type Fields, fieldIn, isFields, numberOf, overlaid } from './json-fields';
import type { KnownNames } from './unknown-names';

/** One question as it came in. Whatever is not a number is NaN, which the engine refuses by name. */
export interface LookupRequest {
  readonly shot: Shot;
  readonly kit: Kit;
  /** Given: what happens at this aim. Left out: which aim to take. */
  readonly aimRad?: number;
  /** The object the request came in, for what only some requests ask. */
  readonly fields: Fields;
}

/** The names of a shot. */
export const SHOT_NAMES = [
  'distanceM',
  'cutDeg',
  'side',
  'height',
  'elevationDeg',
  'speedMps',
  'target',
];

/** The names of a player's scatter. */
export const STROKE_NAMES = ['directionDeg', 'speedShare', 'tipM', 'elevationDeg', 'together'];

/** The names of a kit and of what is not known of it, both held by an object at this path. */
export function kitNames(path: string): KnownNames {
  return {
    [`${path}kit`]: Object.keys(DEFAULT_KIT),
    [`${path}kit.ballFriction`]: Object.keys(DEFAULT_KIT.ballFriction),
    [`${path}kit.bedSlope`]: Object.keys(DEFAULT_KIT.bedSlope),
    [`${path}kit.cushion`]: Object.keys(DEFAULT_KIT.cushion),
    [`${path}kitSd`]: Object.keys(DEFAULT_KIT),
    [`${path}kitSd.bedSlope`]: Object.keys(DEFAULT_KIT.bedSlope),
    [`${path}kitSd.cushion`]: Object.keys(DEFAULT_KIT.cushion),
  };
}

/** Every name of a request, and of the objects in it. */
export const LOOKUP_NAMES: KnownNames = {
  '': ['id', ...SHOT_NAMES, 'kit', 'aimAngleDeg', 'want', 'stroke', 'made', 'kitSd'],
  target: ['distanceM', 'mouthM', 'halfAngleDeg'],
  stroke: STROKE_NAMES,
  ...kitNames(''),
};

/** Reads one parsed JSON line. */
export function parseRequest(json: Fields): LookupRequest {
  return {
    shot: shotFrom(json),
    kit: kitFrom(json.kit),
    ...(json.aimAngleDeg === undefined ? {} : { aimRad: numberOf(json.aimAngleDeg) * RAD_PER_DEG }),
    fields: json,
  };
}

/** Reads a shot from among other fields. */
export function shotFrom(json: Fields): Shot {
  const { target } = json;
  const distance = isFields(target) ? target.distanceM : target;
  return {
    distanceM: numberOf(json.distanceM),
    cutRad: numberOf(json.cutDeg) * RAD_PER_DEG,
    side: numberOf(json.side),
    height: numberOf(json.height),
    elevationRad: numberOf(json.elevationDeg) * RAD_PER_DEG,
    speedMps: numberOf(json.speedMps),
    ...(distance === undefined ? {} : { objectDistanceM: distanceOf(target, distance) }),
  };
}

/** A target that is no object has no distance, and is refused as one. */
function distanceOf(target: unknown, distance: unknown): number {
  return isFields(target) ? numberOf(distance) : Number.NaN;
}

/** Reads a kit: what is left out is that of an ordinary one. */
export function kitFrom(json: unknown): Kit {
  const { ballFriction, bedSlope, cushion, ...plain } = DEFAULT_KIT;
  return {
    ...overlaid(plain, json),
    ballFriction: overlaid(ballFriction, fieldIn(json, 'ballFriction')),
    bedSlope: overlaid(bedSlope, fieldIn(json, 'bedSlope')),
    cushion: overlaid(cushion, fieldIn(json, 'cushion')),
  };
}
