import { INPUT_RANGES } from '../../src/engine/direct/input-ranges';
import type { Shot } from '../../src/engine/direct/shot';
import { DEFAULT_CUSHION, DEFAULT_KIT, type Kit } from '../../src/engine/kit/kit';
import { PLACED_NUMBERS, withNumber } from '../../src/engine/kit/kit-numbers';
import type { Range } from '../../src/engine/numerics/range';
import { MISCUE_LIMIT } from '../../src/engine/stroke/miscue-limit';
import { STROKE_RANGES } from '../../src/engine/stroke/stroke';
import { type HostileValues, hostileValues } from './hostile-values';
import type { Query } from './random-shots';
import { between, type Random } from './seeded-random';

/** A question to the engine that may be anything, and an aim to play it at. */
export interface HostileQuery extends Query {
  readonly aimRad: number;
}

/**
 * A question meant to break the engine: range edges exactly and a step of a double beyond, zeros of
 * both signs, the smallest and the largest doubles, NaN and infinities, and the places where the
 * physics turns: the miscue limit, square cuts, a bed on which nothing stops. Half of them lie
 * wholly within the ranges, so that the engine has to work them out.
 */
export function hostileQuery(random: Random): HostileQuery {
  const values = hostileValues(random, random() < 0.5 ? 0 : 0.06);
  const tip =
    random() < 0.85
      ? tipWithin(random)
      : { side: values(INPUT_RANGES.side), height: values(INPUT_RANGES.height) };
  const shot = {
    distanceM: values(INPUT_RANGES.distanceM),
    cutRad: values(INPUT_RANGES.cutRad),
    ...tip,
    elevationRad: values(INPUT_RANGES.elevationRad),
    speedMps: values(INPUT_RANGES.speedMps),
    ...(random() < 0.15 ? { objectDistanceM: values(INPUT_RANGES.objectDistanceM) } : {}),
  };
  const kit = random() < 0.3 ? DEFAULT_KIT : hostileKit(random, values);
  return { shot, kit, aimRad: aimFor(random, shot, values) };
}

/** Contacts a chalked tip can make, often exactly at the limit. */
function tipWithin(random: Random): Pick<Shot, 'side' | 'height'> {
  const offset = random() < 0.5 ? MISCUE_LIMIT : between(random, 0, MISCUE_LIMIT);
  if (random() < 0.2) return { side: offset * 0.6, height: -offset * 0.8 };
  if (random() < 0.2) return { side: random() < 0.5 ? offset : -offset, height: 0 };
  if (random() < 0.2) return { side: -0, height: random() < 0.5 ? offset : -offset };
  const clock = between(random, 0, 2 * Math.PI);
  return { side: offset * Math.cos(clock), height: offset * Math.sin(clock) };
}

function hostileKit(random: Random, values: HostileValues): Kit {
  const any = PLACED_NUMBERS.reduce(
    (kit, number) => withNumber(kit, number, values(number.range)),
    DEFAULT_KIT,
  );
  return {
    ...any,
    ballFriction: random() < 0.15 ? { a: 0, b: 0, c: 0 } : any.ballFriction,
    bedSlope: random() < 0.5 ? steepSlope(random, any.rollFriction) : slope(random, any.bedSlope),
    cushion: DEFAULT_CUSHION,
  };
}

function slope(random: Random, any: Kit['bedSlope']): Kit['bedSlope'] {
  return random() < 0.4 ? { alongM_per_M: 0, rightM_per_M: -0 } : any;
}

/** A tilt at, just below, just above or far below the one on which nothing stops. */
function steepSlope(random: Random, rollFriction: number): Kit['bedSlope'] {
  const shares = [1, 1 - 2 ** -52, 1 + 2 ** -52, 1 - 1e-9, 0.999, 0.9, 0.5, 1e-6, 1e-14, 1e-300];
  const tilt = (7 / 5) * rollFriction * (shares[Math.floor(random() * shares.length)] ?? 1);
  const clock = random() < 0.5 ? (Math.floor(random() * 4) * Math.PI) / 2 : between(random, 0, 7);
  return { alongM_per_M: tilt * Math.cos(clock), rightM_per_M: tilt * Math.sin(clock) };
}

/** Most often near the object ball, so that the strokes played do touch. */
function aimFor(random: Random, shot: Shot, values: HostileValues): number {
  const near = Math.atan2(0.06, shot.distanceM);
  const range: Range =
    random() < 0.7 && near > 0 ? { min: -near, max: near } : STROKE_RANGES.aimRad;
  return values(range);
}
