import { type DirectGoal, directGoal, type Pot } from '../engine/goal/goal';
import type { NoShot, PositionShot } from '../engine/goal/position-shot';
import { shotFrom } from '../engine/goal/shot-from-position';
import { kitAlong } from '../engine/kit/kit-along';
import { gridFrom } from '../engine/plan/grid-from';
import { placesOf } from '../engine/plan/option-grid';
import { orderWays, rankWays } from '../engine/plan/rank-ways';
import { questionOf } from '../engine/plan/solve-option';
import { sweepOpen } from '../engine/plan/sweep-open';
import type { Stroke } from '../engine/stroke/stroke';
import { worthOf } from '../engine/worth/worth';
import { noShotWords } from '../words/no-shot-words';
import { allWays, toldGoal } from './all-ways';
import { answerFields } from './answer-fields';
import { isRefusal } from './door-refusal';
import type { Fields } from './json-fields';
import { OPTIONS_NAMES, type OptionsRequest, parseOptions } from './options-request';
import { toldWorth } from './told-play';
import { toldRanked, toldShot } from './told-way';

/**
 * Compares all ways to play the position of one line and answers with one line, the easiest first, both
 * JSON: metres, seconds and degrees. Lines are counted from 1. Where one ball and one pocket are all that
 * is said, its direct cuts are compared on the whole grid.
 */
export function answerOptions(line: string, lineNumber: number): string {
  return answerFields(line, lineNumber, OPTIONS_NAMES, answerOf);
}

function answerOf(fields: Fields): object {
  const request = parseOptions(fields);
  if (isRefusal(request)) return request;
  const { balls, shape, kit } = request;
  const { only } = request.play;
  if (only === null) return allWays(request);
  const shot = shotFrom(balls, only, shape, kit);
  return shot.ok ? compared(request, only, shot) : toldNoShot(shot);
}

function toldNoShot(none: NoShot): object {
  return { ok: false, reason: none.reason, ...noShotWords(none) };
}

const NO_DIRECT_WAY =
  'No direct way of playing it goes; banks, kicks and combinations were not looked at.';

function compared(request: OptionsRequest, goal: Pot, shot: PositionShot): object {
  const { balls, shape, kit, spread, profile, zone, most } = request;
  const { headingRad, least } = shot;
  const asked = {
    question: questionOf(shot, kitAlong(kit, headingRad), spread, profile),
    scene: { position: balls, goal, headingRad, shape, kit, zone },
    leastElevationRad: least.elevationRad,
  };
  const grid = gridFrom(balls, headingRad, shape, kit);
  const options = sweepOpen(asked, grid, { from: 0, to: placesOf(grid) });
  const ways = orderWays([...rankWays(asked, options)]).slice(0, most);
  const does = directGoal(goal.ball, goal.pocket);
  const worth = worthTeller(request, shot);
  return {
    ok: true,
    shot: toldShot(shot),
    compared: options.length,
    ways: ways.map((way) => ({
      ...toldRanked(way),
      ...toldGoal({ goal: does, headingRad, doubleKiss: false }, way.option.stroke.aimRad),
      ...toldWorth(worth(does, way.option.stroke)),
    })),
    ...(ways.length === 0 ? { message: NO_DIRECT_WAY } : {}),
  };
}

/** What a stroke of a direct cut is worth on the whole table. */
function worthTeller(request: OptionsRequest, { headingRad }: PositionShot) {
  const { balls: position, shape, kit, spread, profile, zone, play } = request;
  const { ball, pocket, legal, kinds } = play;
  const question = { position, shape, kit, spread, profile, legal, kinds, ball, pocket, zone };
  return (goal: DirectGoal, stroke: Stroke) => worthOf(question, { goal, headingRad, stroke });
}
