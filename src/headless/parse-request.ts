import type { Shot } from '../engine/aim/shot';
import { DEFAULT_KIT, type Kit } from '../engine/model/kit';
import { type Fields, fieldIn, fieldsOf, isFields, numberOf, overlaid } from './json-fields';

/** One question as it came in. Whatever is not a number is NaN, which the engine refuses by name. */
export interface LookupRequest {
  readonly id: unknown;
  readonly shot: Shot;
  readonly kit: Kit;
  /** Given: what happens at this aim. Left out: which aim to take. */
  readonly aimRad?: number;
  /** The object the request came in, for what only some requests ask. */
  readonly fields: Fields;
  /** Names that mean nothing here, dotted where they are nested: most likely slips of the pen. */
  readonly unknown: readonly string[];
}

/** Every name of a request, and of the objects in it. */
const KNOWN: Readonly<Record<string, readonly string[]>> = {
  '': [
    ...['id', 'distanceM', 'cutDeg', 'side', 'height', 'elevationDeg', 'speedMps', 'kit'],
    ...['aimAngleDeg', 'target', 'want', 'stroke', 'kitSd'],
  ],
  kit: Object.keys(DEFAULT_KIT),
  'kit.ballFriction': Object.keys(DEFAULT_KIT.ballFriction),
  'kit.bedSlope': Object.keys(DEFAULT_KIT.bedSlope),
  target: ['distanceM', 'mouthM', 'halfAngleDeg'],
  stroke: ['directionDeg', 'speedShare', 'tipM', 'elevationDeg', 'together'],
  kitSd: Object.keys(DEFAULT_KIT),
  'kitSd.bedSlope': Object.keys(DEFAULT_KIT.bedSlope),
};

function unknownIn(fields: Fields, path: string): string[] {
  return Object.entries(fields).flatMap(([name, value]) => {
    const at = path === '' ? name : `${path}.${name}`;
    if (!KNOWN[path]?.includes(name)) return [at];
    return at in KNOWN ? unknownIn(fieldsOf(value), at) : [];
  });
}

const RAD = Math.PI / 180;

/** Reads one parsed JSON line; null where it is not an object. */
export function parseRequest(json: unknown): LookupRequest | null {
  if (!isFields(json)) return null;
  const { target } = json;
  const distance = isFields(target) ? target.distanceM : target;
  return {
    id: json.id ?? null,
    shot: {
      distanceM: numberOf(json.distanceM),
      cutRad: numberOf(json.cutDeg) * RAD,
      side: numberOf(json.side),
      height: numberOf(json.height),
      elevationRad: numberOf(json.elevationDeg) * RAD,
      speedMps: numberOf(json.speedMps),
      ...(distance === undefined ? {} : { objectDistanceM: distanceOf(target, distance) }),
    },
    kit: kitFrom(json.kit),
    ...(json.aimAngleDeg === undefined ? {} : { aimRad: numberOf(json.aimAngleDeg) * RAD }),
    fields: json,
    unknown: unknownIn(json, ''),
  };
}

/** A target that is no object has no distance, and is refused as one. */
function distanceOf(target: unknown, distance: unknown): number {
  return isFields(target) ? numberOf(distance) : Number.NaN;
}

function kitFrom(json: unknown): Kit {
  const { ballFriction, bedSlope, ...plain } = DEFAULT_KIT;
  return {
    ...overlaid(plain, json),
    ballFriction: overlaid(ballFriction, fieldIn(json, 'ballFriction')),
    bedSlope: overlaid(bedSlope, fieldIn(json, 'bedSlope')),
  };
}
