import type { PositionShot } from '../../../../src/engine/goal/position-shot';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';
import { kitAlong } from '../../../../src/engine/kit/kit-along';
import { UNMEASURED } from '../../../../src/engine/kit/kit-spread';
import type { NamedBall } from '../../../../src/engine/lie/position';
import { chanceMap } from '../../../../src/engine/plan/chance-map';
import { distinctWays } from '../../../../src/engine/plan/distinct-ways';
import type { OptionGrid } from '../../../../src/engine/plan/option-grid';
import { placesOf } from '../../../../src/engine/plan/option-grid';
import type { FanPlay, RankedWay } from '../../../../src/engine/plan/ranked-way';
import type { OptionQuestion } from '../../../../src/engine/plan/solve-option';
import { sweepOptions } from '../../../../src/engine/plan/sweep-options';
import { INVENTED_PROFILES } from '../../../../src/engine/room/stroke-profile';
import type { Stroke } from '../../../../src/engine/stroke/stroke';
import { playTable } from '../../../../src/engine/table/play-table';
import { WPA_POCKETS } from '../../../../src/engine/table/pocket-standard';
import { tableShape } from '../../../../src/engine/table/table-shape';

export const SHAPE = tableShape(2.54, 1.27, WPA_POCKETS);
const RADIUS_M = DEFAULT_KIT.ballRadiusM;
const LEVEL_RAD = 0.05;

const DIAMETER_M = 2 * RADIUS_M;

/** A shot that follows from two balls and the far right pocket, nothing in the way. */
export function shotFrom(
  cue: NamedBall,
  object: NamedBall,
  pocketName: string,
): PositionShot | null {
  const mouth = SHAPE.pockets.find(({ name }) => name === pocketName)?.mouth;
  if (!mouth) return null;
  const distanceM = Math.hypot(mouth.x - object.xM, mouth.y - object.yM);
  const [ux, uy] = [(mouth.x - object.xM) / distanceM, (mouth.y - object.yM) / distanceM];
  const ghost = { xM: object.xM - DIAMETER_M * ux, yM: object.yM - DIAMETER_M * uy };
  const headingRad = Math.atan2(ghost.xM - cue.xM, ghost.yM - cue.yM);
  return {
    ok: true,
    distanceM: Math.hypot(ghost.xM - cue.xM, ghost.yM - cue.yM),
    cutRad: Math.atan2(ux, uy) - headingRad,
    headingRad,
    ghost,
    target: { kind: 'mouth', distanceM, mouthM: 0.1159 },
    inTheWay: [],
    least: { elevationRad: LEVEL_RAD, over: 'nothing' },
    bridge: 'on-the-bed',
  };
}

/** A small grid, so that a comparison takes no time. */
const GRID: OptionGrid = {
  sides: [-0.4, -0.2, 0, 0.2, 0.4],
  heights: [0, -0.25],
  elevationsRad: [LEVEL_RAD, 0.2],
  speedsMps: [0.9, 1.3, 1.9, 2.8],
};

/** What the engine makes of a shot on a small grid; the rest of each way is invented. */
export function comparisonOf(shot: PositionShot, cue: NamedBall, object: NamedBall) {
  const question: OptionQuestion = {
    distanceM: shot.distanceM,
    cutRad: shot.cutRad,
    target: shot.target,
    kit: kitAlong(DEFAULT_KIT, 0),
    spread: UNMEASURED,
    profile: INVENTED_PROFILES.club,
  };
  const options = sweepOptions(question, GRID, { from: 0, to: placesOf(GRID) });
  const ways = distinctWays(question, options, LEVEL_RAD).map(({ option, way }): RankedWay => {
    const [fan] = fanOf(option.stroke, shot, [cue, object]);
    const outcome = fan?.play.balls[0]?.outcome;
    const at = outcome && outcome.kind !== 'pocketed' ? outcome : cue;
    const places = Array.from({ length: 30 }, (_, i) => ({
      xM: at.xM + 0.07 * Math.sin(7.1 * i),
      yM: at.yM + 0.12 * Math.sin(3.7 * i + 1),
    }));
    return {
      option,
      way,
      chance: option.chance.share,
      chanceError: 0.02,
      hardest: 'speed',
      windows: null,
      rest: { xM: at.xM, yM: at.yM, sdM: 0.12, places },
      goodPosition: null,
      scratch: outcome?.kind === 'pocketed' ? 0.4 : 0.03,
    };
  });
  return { ways, map: chanceMap(GRID, options) };
}

const FAN_RAD = { true: 0, thin: 0.012, full: -0.012, 'missed-thin': 0.03, 'missed-full': -0.03 };

/** Strokes a fixed angle off, played on the table. */
export function fanOf(
  stroke: Stroke,
  { headingRad }: PositionShot,
  balls: readonly NamedBall[],
): readonly FanPlay[] {
  const hits = Object.keys(FAN_RAD) as (keyof typeof FAN_RAD)[];
  return hits.flatMap((hit) => {
    const aim = headingRad + stroke.aimRad + FAN_RAD[hit];
    const played = playTable(balls, { ...stroke, aimRad: aim }, DEFAULT_KIT, SHAPE);
    return played.ok ? [{ hit, aimRad: aim, play: played }] : [];
  });
}
