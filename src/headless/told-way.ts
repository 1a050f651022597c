import type { PositionShot } from '../engine/goal/position-shot';
import { DEG_PER_RAD } from '../engine/numerics/angle';
import type { RankedWay } from '../engine/plan/ranked-way';
import { toldWindows } from './room-of';

/** A shot from a position, in the request's units. */
export function toldShot({ ok, cutRad, headingRad, least, ...shot }: PositionShot): object {
  return {
    ...shot,
    cutDeg: cutRad * DEG_PER_RAD,
    headingDeg: headingRad * DEG_PER_RAD,
    least: { elevationDeg: least.elevationRad * DEG_PER_RAD, over: least.over },
  };
}

/** A way that was worked out, in the request's units. */
export function toldRanked(ranked: RankedWay): object {
  const { option, way, chance, chanceError, hardest, windows, rest, ...fate } = ranked;
  const { side, height, elevationRad, speedMps } = option.stroke;
  return {
    side,
    height,
    elevationDeg: elevationRad * DEG_PER_RAD,
    speedMps,
    aimAngleDeg: option.stroke.aimRad * DEG_PER_RAD,
    way,
    chance: { share: chance, error: chanceError },
    hardest,
    forgives: toldWindows(windows),
    rest: { xM: rest.xM, yM: rest.yM, sdM: rest.sdM },
    ...fate,
  };
}
