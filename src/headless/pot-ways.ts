import { directGoal, type Pot, WAY_KINDS } from '../engine/goal/goal';
import type { PositionShot } from '../engine/goal/position-shot';
import { shotFrom } from '../engine/goal/shot-from-position';
import { kitAlong } from '../engine/kit/kit-along';
import { gridFrom } from '../engine/plan/grid-from';
import { placesOf } from '../engine/plan/option-grid';
import { easierFirst, orderWays, rankWays } from '../engine/plan/rank-ways';
import { questionOf, taskOf } from '../engine/plan/solve-option';
import { sweepOpen } from '../engine/plan/sweep-open';
import type { ToldWay } from '../engine/ways/refine-found';
import { searched, toldWays } from './all-ways';
import type { OptionsRequest } from './options-request';

/** Worked out in full to tell the best of each kind: of some kinds more than one. */
const MOST_OTHERS = 6;

/** The ways of a kind or some, and out of how many they are. */
interface Compared {
  readonly ways: readonly ToldWay[];
  readonly compared: number;
}

/**
 * One ball into one pocket: its direct cuts compared on the whole grid, and the best way of each other
 * kind that there is. Where no direct cut goes, the answer says why.
 */
export function potWays(request: OptionsRequest, goal: Pot): object {
  const { balls, shape, kit, most } = request;
  const shot = shotFrom(balls, goal, shape, kit);
  const cuts: Compared = shot.ok ? directCuts(request, goal, shot) : { ways: [], compared: 0 };
  const kinds = cuts.ways.length > 0 ? WAY_KINDS.filter((kind) => kind !== 'direct') : WAY_KINDS;
  const found = searched(request, kinds, { most: MOST_OTHERS, keepsLow: false });
  const others = kinds.flatMap((kind) => found.ways.find((way) => way.goal.kind === kind) ?? []);
  const room = Math.max(1, most - others.length);
  return toldWays({
    shot: shot.ok ? shot : null,
    compared: cuts.compared + found.found.length,
    ways: [...cuts.ways.slice(0, room), ...others].sort(easierFirst).slice(0, most),
    none: found.none,
  });
}

function directCuts(request: OptionsRequest, goal: Pot, shot: PositionShot): Compared {
  const { balls, shape, kit, spread, profile, zone } = request;
  const { headingRad, least } = shot;
  const asked = {
    question: questionOf(shot, kitAlong(kit, headingRad), spread, profile),
    scene: { position: balls, goal, headingRad, shape, kit, zone },
    leastElevationRad: least.elevationRad,
  };
  const grid = gridFrom(balls, headingRad, shape, kit);
  const options = sweepOpen(asked, grid, { from: 0, to: placesOf(grid) });
  const does = {
    goal: directGoal(goal.ball, goal.pocket),
    headingRad,
    doubleKiss: false,
    shot,
    fullerSide: taskOf(asked.question).thinSide,
  };
  return {
    ways: orderWays([...rankWays(asked, options)]).map((way) => ({ ...way, ...does })),
    compared: options.length,
  };
}
