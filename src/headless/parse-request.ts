import type { Shot } from '../engine/aim/shot';
import { DEFAULT_KIT, type Kit } from '../engine/model/kit';
import { type Fields, fieldsOf, isFields, numberOf, overlaid } from './json-fields';

/** One question as it came in. Whatever is not a number is NaN, which the engine refuses by name. */
export interface LookupRequest {
  readonly id: unknown;
  readonly shot: Shot;
  readonly kit: Kit;
  /** Given: what happens at this aim. Left out: which aim to take. */
  readonly aimRad?: number;
  /** The object the request came in, for what only some requests ask. */
  readonly fields: Fields;
}

const RAD = Math.PI / 180;

/** Reads one parsed JSON line; null where it is not an object. */
export function parseRequest(json: unknown): LookupRequest | null {
  if (!isFields(json)) return null;
  const target = fieldsOf(json.target);
  return {
    id: json.id ?? null,
    shot: {
      distanceM: numberOf(json.distanceM),
      cutRad: numberOf(json.cutDeg) * RAD,
      side: numberOf(json.side),
      height: numberOf(json.height),
      elevationRad: numberOf(json.elevationDeg) * RAD,
      speedMps: numberOf(json.speedMps),
      ...(target.distanceM === undefined ? {} : { objectDistanceM: numberOf(target.distanceM) }),
    },
    kit: kitFrom(json.kit),
    ...(json.aimAngleDeg === undefined ? {} : { aimRad: numberOf(json.aimAngleDeg) * RAD }),
    fields: json,
  };
}

function kitFrom(json: unknown): Kit {
  if (json !== undefined && !isFields(json)) return { ...DEFAULT_KIT, massRatio: Number.NaN };
  const given = fieldsOf(json);
  const { ballFriction, bedSlope, ...plain } = DEFAULT_KIT;
  return {
    ...overlaid(plain, given),
    ballFriction: overlaid(ballFriction, fieldsOf(given.ballFriction)),
    bedSlope: overlaid(bedSlope, fieldsOf(given.bedSlope)),
  };
}
