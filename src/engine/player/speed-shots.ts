import { laidTable, playLaid } from '../goal/laid-table';
import type { PocketName } from '../table/pocket-shape';
import type { DrillShot } from './drill-shot';
import {
  at,
  type Crossing,
  type LevelShot,
  type LevelTable,
  layShots,
  PLAIN,
  placeOn,
} from './level-test';

/** A straight shot after which the cue ball rolls on to where diamonds cross. */
interface FollowLayout {
  readonly cueBall: Crossing;
  readonly ball: Crossing;
  readonly rest: Crossing;
  readonly pockets: readonly PocketName[];
}

const CORNERS = ['far-right', 'far-left'] as const;
const MIDDLES = ['middle-right', 'middle-left'] as const;

/** Near and far (invented): in all of them the cue ball rolls before it meets the ball. */
const LAYOUTS: readonly FollowLayout[] = [
  { cueBall: at(1, 4), ball: at(2, 4), rest: at(3, 4), pockets: MIDDLES },
  { cueBall: at(1, 5), ball: at(2, 6), rest: at(3, 7), pockets: CORNERS },
  { cueBall: at(1, 1), ball: at(2, 2), rest: at(3, 3), pockets: MIDDLES },
  { cueBall: at(1, 2), ball: at(2, 4), rest: at(3, 6), pockets: CORNERS },
];

/** How far from there it may stop, in widths of a ball. */
const REACHES = [0.5, 0.75, 1, 1.5, 2, 3];

/** Soft to firm: between two the run is taken as straight in the logarithm, 1 % off at most. */
const SPEEDS_MPS = Array.from({ length: 14 }, (_, index) => 0.7 * 1.1 ** index);

/**
 * Straight shots struck at the centre, after which the cue ball is to roll on and stop within reach of a
 * crossing of diamonds. What is counted is how far it rolls along its line; what a tilted bed does to it
 * sideways is left out.
 *
 * @param reaches how far from there it may stop, in widths of a ball; left out: from half of one to three
 */
export function speedShots(
  table: LevelTable,
  reaches: readonly number[] = REACHES,
): readonly DrillShot[] {
  return LAYOUTS.flatMap((layout) =>
    layout.pockets.flatMap((pocket) => onto(table, layout, pocket, reaches)),
  );
}

function onto(
  table: LevelTable,
  layout: FollowLayout,
  pocket: PocketName,
  reaches: readonly number[],
): readonly DrillShot[] {
  const { shape, kit } = table;
  const rest = placeOn(shape, layout.rest, pocket);
  const ball = placeOn(shape, layout.ball, pocket);
  const meantM = Math.hypot(rest.xM - ball.xM, rest.yM - ball.yM);
  const layouts = [{ ball: layout.ball, cueBalls: [layout.cueBall] }];
  const [plain] = layShots(table, layouts, [pocket], [PLAIN]);
  const runs = plain === undefined ? [] : runsOf(table, plain);
  const speedMps = speedFor(runs, meantM);
  if (speedMps === null) return [];
  const [shot] = layShots(table, layouts, [pocket], [{ ...PLAIN, speedMps }]);
  if (shot === undefined) return [];
  return reaches.flatMap((balls) => {
    const radiusM = 2 * balls * kit.ballRadiusM;
    const [least, most] = [speedFor(runs, meantM - radiusM), speedFor(runs, meantM + radiusM)];
    if (least === null || most === null) return [];
    const [low, high] = [Math.log(least / speedMps), Math.log(most / speedMps)];
    return [{ ...shot, room: (high - low) / 2, rest: { ...rest, radiusM, low, high } }];
  });
}

/** How far the cue ball rolls on past where the ball lay, by the speed. */
interface Run {
  readonly speedMps: number;
  readonly runM: number;
}

/** As long as more speed takes it farther, and into no pocket: beyond that it met something. */
function runsOf({ shape, kit }: LevelTable, shot: LevelShot): readonly Run[] {
  const ball = shot.position.find(({ name }) => name !== 'cue');
  const { headingRad } = shot;
  const runs: Run[] = [];
  for (const speedMps of SPEEDS_MPS) {
    const { side, height, elevationRad } = shot.shot;
    const aimRad = headingRad + shot.line.solvedRad;
    const stroke = { aimRad, side, height, elevationRad, speedMps };
    const laid = laidTable(shot.position, shape);
    const end = playLaid(laid, stroke, kit, { endsOnly: true })?.balls[0]?.outcome;
    if (ball === undefined || end?.kind !== 'rests') break;
    const [dx, dy] = [end.xM - ball.xM, end.yM - ball.yM];
    const runM = dx * Math.sin(headingRad) + dy * Math.cos(headingRad);
    if (runM <= (runs.at(-1)?.runM ?? Number.NEGATIVE_INFINITY)) break;
    runs.push({ speedMps, runM });
  }
  return runs;
}

/** The speed after which it rolls so far; null where that is not among them. */
function speedFor(runs: readonly Run[], runM: number): number | null {
  const above = runs.findIndex((run) => run.runM >= runM);
  const [low, high] = [runs[above - 1], runs[above]];
  if (low === undefined || high === undefined) return null;
  const share = (runM - low.runM) / (high.runM - low.runM);
  return low.speedMps * (high.speedMps / low.speedMps) ** share;
}
