import { DEG_PER_RAD, wrapped } from '../engine/numerics/angle';
import type { RestSpread } from '../engine/plan/ranked-way';
import type { ToldSafety } from '../engine/worth/safety';
import type { Worth } from '../engine/worth/worth';

/** What a way is worth, and what it leaves. A pot has no ball that it only strikes. */
export function toldWorth({ worth, after, miss }: Worth): object {
  return { worth, after, miss, struck: null };
}

/** A safety in the request's units, with the fields of every way: what only a pot has is null. */
export function toldSafety({
  goal,
  headingRad,
  stroke,
  way,
  worth,
  rest,
  struck,
}: ToldSafety): object {
  const { kind, ball, pocket, via } = goal;
  const { side, height, elevationRad, speedMps } = stroke;
  const { goes, goesError, scratch } = worth;
  return {
    side,
    height,
    elevationDeg: elevationRad * DEG_PER_RAD,
    speedMps,
    aimAngleDeg: null,
    way,
    chance: { share: goes, error: goesError },
    hardest: null,
    forgives: null,
    rest: toldRest(rest),
    goodPosition: null,
    clean: 1 - scratch,
    scratch,
    kind,
    ball,
    pocket,
    via,
    headingDeg: wrapped(headingRad + stroke.aimRad) * DEG_PER_RAD,
    doubleKiss: false,
    shot: null,
    ...toldWorth(worth),
    struck: { ball: struck.ball, rest: toldRest(struck.rest) },
  };
}

function toldRest({ xM, yM, sdM }: RestSpread): object {
  return { xM, yM, sdM };
}
