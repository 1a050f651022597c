import { slopeSeenAlong } from '../engine/model/bed-slope';
import { gridFrom } from '../engine/options/grid-from';
import { placesOf } from '../engine/options/option-grid';
import { orderWays, rankWays } from '../engine/options/rank-ways';
import type { RankedWay } from '../engine/options/ranked-way';
import { sweepOpen } from '../engine/options/sweep-open';
import type { NoShot, PositionShot } from '../engine/position/position';
import { shotFrom } from '../engine/position/shot-from-position';
import { answerFields } from './answer-fields';
import { isRefusal } from './door-refusal';
import type { Fields } from './json-fields';
import { OPTIONS_NAMES, type OptionsRequest, parseOptions } from './options-request';
import { toldWindows } from './room-of';

const DEGREES = 180 / Math.PI;

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
  const { balls, intent, shape, kit } = request;
  const shot = shotFrom(balls, intent, shape, kit);
  return shot.ok ? compared(request, shot) : toldNoShot(shot);
}

const REMEDIES: { readonly [R in NoShot['reason']]: string } = {
  'no-cue-ball': 'Give a ball named "cue".',
  'no-such-ball': 'Play a ball that is on the table.',
  overlap: 'Lay the balls at least a ball’s width apart.',
  'off-bed': 'Lay every ball on the bed, clear of cushions and holes.',
  'too-thin': 'Choose another ball or pocket, or lay the cue ball elsewhere.',
  'pocket-closed': 'Choose another pocket.',
};

function toldNoShot(none: NoShot): object {
  return { ...none, remedy: REMEDIES[none.reason] };
}

const NO_DIRECT_WAY =
  'No direct way of playing it goes; banks, kicks and combinations were not looked at.';

function compared(request: OptionsRequest, shot: PositionShot): object {
  const { balls, intent, shape, kit, spread, profile, zone, most } = request;
  const { distanceM, cutRad, headingRad, target, least } = shot;
  const alongShot = { ...kit, bedSlope: slopeSeenAlong(kit.bedSlope, headingRad) };
  const asked = {
    question: { distanceM, cutRad, target, kit: alongShot, spread, profile },
    scene: { position: balls, intent, headingRad, shape, kit, zone },
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
    cutDeg: cutRad * DEGREES,
    headingDeg: headingRad * DEGREES,
    least: { elevationDeg: least.elevationRad * DEGREES, over: least.over },
  };
}

function toldWay(ranked: RankedWay): object {
  const { option, way, chance, chanceError, hardest, windows, rest, ...fate } = ranked;
  const { side, height, elevationRad, speedMps } = option.shot;
  return {
    side,
    height,
    elevationDeg: elevationRad * DEGREES,
    speedMps,
    aimAngleDeg: option.aimRad * DEGREES,
    way,
    chance: { share: chance, error: chanceError },
    hardest,
    forgives: toldWindows(windows),
    rest: { xM: rest.xM, yM: rest.yM, sdM: rest.sdM },
    ...fate,
  };
}
