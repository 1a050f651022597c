import type { BallState } from '../ball/ball-state';
import type { Kit } from '../kit/kit';
import { KIT_QUANTITIES } from '../kit/kit-spread';
import { comesToRest } from '../motion/roll';
import { Run } from '../motion/run';
import { isBeyondMiscue } from '../stroke/miscue-limit';
import type { Stroke } from '../stroke/stroke';
import { stateFrom } from './chains';
import { Follower } from './follower';
import type { PlayedGoal } from './goal';
import { type LaidTable, playLaid } from './laid-table';
import { headingAt, mouthArrival } from './last-leg';
import type { Arrival, Lost, Task } from './task';

/** A way that is found by playing it: where it lies, and how the cue lies when it is as meant. */
export interface PlayedWay {
  readonly laid: LaidTable;
  readonly goal: PlayedGoal;
  /** The cue's direction over the table when the stroke is as meant, rad. */
  readonly headingRad: number;
}

/** More than a way needs until its ball is at the mouth. */
const MOST_EVENTS = 60;

/** The ball that should fall, as it sets off on its last leg; or why it does not. */
export function lastLeg(
  { laid, goal }: Omit<PlayedWay, 'headingRad'>,
  stroke: Stroke,
  kit: Kit,
  toTheEnd: boolean,
): BallState | Lost {
  if (isBeyondMiscue(stroke.side, stroke.height)) return 'miscue';
  if (!comesToRest(kit)) return 'short';
  const follower = new Follower(goal.via, goal.ball, laid.names);
  const until = (event: Parameters<Follower['take']>[0]) =>
    follower.take(event) || (!toTheEnd && follower.isDone);
  const play = playLaid(laid, stroke, kit, { mostEvents: MOST_EVENTS, until });
  if (follower.lost !== null) return follower.lost;
  const run = play?.balls[laid.names.indexOf(goal.ball)];
  if (run === undefined || !follower.isDone) return 'untouched';
  return stateFrom(run, follower.atS) ?? 'short';
}

/**
 * The task of a way that is found by playing it: the whole table is played until the ball is on its
 * last leg, and how it comes to the mouth from there is worked out in closed form. So the miss is
 * smooth wherever the same things happen, and lost where another ball, or a second touch, comes
 * between. The aim of a stroke is counted from the way's own heading.
 *
 * The miss is told such that it falls as the cue turns right, as a direct cut's does: what is thin then
 * means the same of both.
 *
 * @param meant the stroke whose aim is 0
 * @param kit on which it is meant
 */
export function playedOut(way: PlayedWay, meant: Stroke, kit: Kit): Task {
  const { laid, goal, headingRad } = way;
  const pocket = laid.shape.pockets.find(({ name }) => name === goal.pocket);
  const run = new Run();
  const turned = (stroke: Stroke) => ({ ...stroke, aimRad: headingRad + stroke.aimRad });
  const legOf = (played: Kit, stroke: Stroke) => lastLeg(way, turned(stroke), played, true);
  const arrival = (played: Kit, stroke: Stroke): Arrival | Lost => {
    const ball = legOf(played, stroke);
    if (typeof ball === 'string') return ball;
    const heading = pocket === undefined ? null : headingAt(ball, pocket, laid.shape, played);
    return (heading && mouthArrival(ball, heading, played, run)) ?? 'short';
  };
  const direction = (played: Kit, stroke: Stroke): number | Lost => {
    const ball = legOf(played, stroke);
    if (typeof ball === 'string') return ball;
    const heading = pocket === undefined ? null : headingAt(ball, pocket, laid.shape, played);
    return heading?.offRad ?? 'short';
  };
  const flip = flipOf(arrival, meant, kit);
  const ball = legOf(kit, meant);
  const open =
    typeof ball === 'string' || pocket === undefined
      ? null
      : (headingAt(ball, pocket, laid.shape, kit)?.open ?? null);
  return {
    arrivalAt(played, stroke) {
      const told = arrival(played, stroke);
      return typeof told === 'string' ? told : { ...told, miss: flip * told.miss };
    },
    directionAt(played, stroke) {
      const told = direction(played, stroke);
      return typeof told === 'string' ? told : flip * told;
    },
    aims: () => [0],
    quantities: KIT_QUANTITIES,
    allowedRad: open?.halfAngleRad ?? 1,
    thinSide: thinSideOf(way, meant, kit),
  };
}

/** A turn for the sign of a slope, rad. */
const LOOK_RAD = 2e-4;

function flipOf(
  arrival: (kit: Kit, stroke: Stroke) => Arrival | Lost,
  meant: Stroke,
  kit: Kit,
): 1 | -1 {
  const [left, right] = [-LOOK_RAD, LOOK_RAD].map((by) =>
    arrival(kit, { ...meant, aimRad: meant.aimRad + by }),
  );
  if (typeof left !== 'object' || typeof right !== 'object') return 1;
  return right.miss > left.miss ? -1 : 1;
}

/** A straighter hit than this, as a share of two radii, has neither a thin nor a full side. */
const STRAIGHT = 0.02;

/** Which way the cue turns for a fuller hit of the first ball: 1 right, −1 left; 0: it is full. */
function thinSideOf({ laid, headingRad }: PlayedWay, meant: Stroke, kit: Kit): 1 | -1 | 0 {
  const offAt = (by: number) => firstOffset(laid, { ...meant, aimRad: headingRad + by }, kit);
  const [left, here, right] = [-LOOK_RAD, 0, LOOK_RAD].map(offAt);
  if (here == null || left == null || right == null || Math.abs(here) < STRAIGHT) return 0;
  return Math.abs(right) < Math.abs(left) ? 1 : -1;
}

/** How far beside the first ball's middle the cue ball meets it, right +, of two radii; null: never. */
function firstOffset(laid: LaidTable, stroke: Stroke, kit: Kit): number | null {
  let other = -1;
  const play = playLaid(laid, stroke, kit, {
    mostEvents: MOST_EVENTS,
    until: (event) => {
      if (event.kind !== 'hits-ball' || event.ball !== 0) return false;
      other = event.other;
      return true;
    },
  });
  const at = play?.events.at(-1);
  const ball = laid.balls[other];
  const before = play?.balls[0]?.phases.filter(({ startS }) => startS < (at?.timeS ?? 0));
  const way = before?.at(-1);
  if (at === undefined || ball === undefined || way === undefined) return null;
  const { vx, vy } = way.start;
  const [dx, dy] = [at.xM - ball.xM, at.yM - ball.yM];
  return (dx * vy - dy * vx) / (Math.hypot(vx, vy) * 2 * kit.ballRadiusM);
}
