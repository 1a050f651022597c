import { directGoal, type Pot, WAY_KINDS } from '../engine/goal/goal';
import type { PositionShot } from '../engine/goal/position-shot';
import { shotFrom } from '../engine/goal/shot-from-position';
import { kitAlong } from '../engine/kit/kit-along';
import { gridFrom } from '../engine/plan/grid-from';
import { placesOf } from '../engine/plan/option-grid';
import { easierFirst, orderWays, rankWays } from '../engine/plan/rank-ways';
import { questionOf, taskOf } from '../engine/plan/solve-option';
import { sweepOpen } from '../engine/plan/sweep-open';
import { worthOf } from '../engine/worth/worth';
import type { WorthyWay } from '../engine/worth/worthy-ways';
import { askedOf, searched, toldPlays } from './all-ways';
import type { OptionsRequest } from './options-request';

/** Worked out in full to tell the best of each kind: of some kinds more than one. */
const OTHERS = { most: 6, keepsLow: false, order: 'goes', hasSafeties: false } as const;

/** The ways of a kind or some, and out of how many they are. */
interface Compared {
  readonly ways: readonly WorthyWay[];
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
  const found = searched(request, kinds, OTHERS);
  const ways = found.plays.flatMap((play) => ('struck' in play ? [] : [play]));
  const others = kinds.flatMap((kind) => ways.find((way) => way.goal.kind === kind) ?? []);
  const room = Math.max(1, most - others.length);
  return toldPlays({
    shot: shot.ok ? shot : null,
    compared: cuts.compared + found.found.length,
    plays: [...cuts.ways.slice(0, room), ...others].sort(easierFirst).slice(0, most),
    none: found.none,
    hasSafeties: false,
  });
}

function directCuts(request: OptionsRequest, goal: Pot, shot: PositionShot): Compared {
  const { balls, shape, kit, spread, profile, zone, most } = request;
  const { headingRad, least } = shot;
  const asked = {
    question: questionOf(shot, kitAlong(kit, headingRad), spread, profile),
    scene: { position: balls, goal, headingRad, shape, kit, zone },
    leastElevationRad: least.elevationRad,
  };
  const grid = gridFrom(balls, headingRad, shape, kit);
  const options = sweepOpen(asked, grid, { from: 0, to: placesOf(grid) });
  const whole = askedOf(request, ['direct']);
  const does = {
    goal: directGoal(goal.ball, goal.pocket),
    headingRad,
    doubleKiss: false,
    shot,
    fullerSide: taskOf(asked.question).thinSide,
    // Counted along the straight way alone.
    asTold: 1,
  };
  return {
    ways: orderWays([...rankWays(asked, options)])
      .slice(0, most)
      .map((way) => ({
        ...way,
        ...does,
        worth: worthOf(whole, { ...does, stroke: way.option.stroke }),
      })),
    compared: options.length,
  };
}
