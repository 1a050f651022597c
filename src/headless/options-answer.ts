import type { NoShot, PositionShot } from '../engine/goal/position-shot';
import { shotFrom } from '../engine/goal/shot-from-position';
import { kitAlong } from '../engine/kit/kit-along';
import { DEG_PER_RAD } from '../engine/numerics/angle';
import { gridFrom } from '../engine/plan/grid-from';
import { placesOf } from '../engine/plan/option-grid';
import { orderWays, rankWays } from '../engine/plan/rank-ways';
import type { RankedWay } from '../engine/plan/ranked-way';
import { questionOf } from '../engine/plan/solve-option';
import { sweepOpen } from '../engine/plan/sweep-open';
import { noShotWords } from '../words/no-shot-words';
import { answerFields } from './answer-fields';
import { isRefusal } from './door-refusal';
import type { Fields } from './json-fields';
import { OPTIONS_NAMES, type OptionsRequest, parseOptions } from './options-request';
import { toldWindows } from './room-of';

/**
 * Compares all ways to play the ball of one line and answers with one line, the easiest first, both
 * JSON: metres, seconds and degrees. Lines are counted from 1.
 */
export function answerOptions(line: string, lineNumber: number): string {
  return answerFields(line, lineNumber, OPTIONS_NAMES, answerOf);
}

function answerOf(fields: Fields): object {
  const request = parseOptions(fields);
  if (isRefusal(request)) return request;
  const { balls, goal, shape, kit } = request;
  const shot = shotFrom(balls, goal, shape, kit);
  return shot.ok ? compared(request, shot) : toldNoShot(shot);
}

function toldNoShot(none: NoShot): object {
  return { ok: false, reason: none.reason, ...noShotWords(none) };
}

const NO_DIRECT_WAY =
  'No direct way of playing it goes; banks, kicks and combinations were not looked at.';

function compared(request: OptionsRequest, shot: PositionShot): object {
  const { balls, goal, shape, kit, spread, profile, zone, most } = request;
  const { headingRad, least } = shot;
  const asked = {
    question: questionOf(shot, kitAlong(kit, headingRad), spread, profile),
    scene: { position: balls, goal, headingRad, shape, kit, zone },
    leastElevationRad: least.elevationRad,
  };
  const grid = gridFrom(balls, headingRad, shape, kit);
  const options = sweepOpen(asked, grid, { from: 0, to: placesOf(grid) });
  const ways = orderWays([...rankWays(asked, options)]).slice(0, most);
  return {
    ok: true,
    shot: toldShot(shot),
    compared: options.length,
    ways: ways.map(toldWay),
    ...(ways.length === 0 ? { message: NO_DIRECT_WAY } : {}),
  };
}

function toldShot({ ok, cutRad, headingRad, least, ...shot }: PositionShot): object {
  return {
    ...shot,
    cutDeg: cutRad * DEG_PER_RAD,
    headingDeg: headingRad * DEG_PER_RAD,
    least: { elevationDeg: least.elevationRad * DEG_PER_RAD, over: least.over },
  };
}

function toldWay(ranked: RankedWay): object {
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
