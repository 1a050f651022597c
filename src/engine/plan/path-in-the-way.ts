import { layoutOf } from '../direct/layout';
import { onStraightWay, wayToMouth } from '../goal/in-the-way';
import type { InTheWay } from '../goal/position-shot';
import { ballsOf, playOn, type Scene } from '../goal/scene';
import { strike } from '../impacts/strike';
import { ballNamed, placeOf, without } from '../lie/balls-of';
import type { BallName } from '../lie/position';
import { travel } from '../motion/journey';
import { objectBallAtRest } from '../motion/object-ball-at-rest';
import type { Obstacle } from '../motion/obstacle';
import type { TableEvent } from '../table/table-play';
import type { RankQuestion } from './refine-way';
import type { Option } from './solve-option';

/**
 * What a solved option would really hit on the way, curves, hops and all: the cue ball before it
 * comes to the object ball, and that before it comes to its pocket. Played out on the table.
 */
export function pathInTheWay(scene: Scene, { stroke }: Option): readonly InTheWay[] {
  const play = playOn(scene, stroke);
  if (play === null) return [];
  const names = ballsOf(scene).map(({ name }) => name);
  const byCue = play.events.findIndex((event) => touches(event, 0));
  const cue = obstacleIn(play.events[byCue], 0, 1, names);
  if (cue !== null) return [{ mover: 'cue', what: cue }];
  const later = play.events.slice(byCue + 1).filter((event) => !isMeeting(event, 0, 1));
  const object = obstacleIn(
    later.find((event) => touches(event, 1) || isFallOf(event, 1)),
    1,
    0,
    names,
  );
  return object === null ? [] : [{ mover: 'object', what: object }];
}

function isMeeting(event: TableEvent, one: number, other: number): boolean {
  if (event.kind !== 'hits-ball') return false;
  return (
    Math.min(one, other) === Math.min(event.ball, event.other) &&
    Math.max(one, other) === Math.max(event.ball, event.other)
  );
}

/** Whether a ball meets a ball or a nose; jaws are part of the pocket that is played at. */
function touches(event: TableEvent, ball: number): boolean {
  if (event.kind === 'hits-ball') return event.ball === ball || event.other === ball;
  return event.kind === 'hits-cushion' && event.ball === ball && event.part !== 'jaw';
}

function isFallOf(event: TableEvent, ball: number): boolean {
  return event.kind === 'pocketed' && event.ball === ball;
}

/** Who or what a ball meets, if not the one it should. */
function obstacleIn(
  event: TableEvent | undefined,
  ball: number,
  wanted: number,
  names: readonly BallName[],
): BallName | 'jaw' | null {
  if (event === undefined || event.kind === 'pocketed') return null;
  if (event.kind !== 'hits-ball') return 'jaw';
  const other = event.ball === ball ? event.other : event.ball;
  return other === wanted ? null : (names[other] ?? null);
}

/**
 * Tells of options whether they can be played at all: the cue ball's real path meets the object ball
 * before any other ball, and nothing stands in that one's way to the mouth. All options send it the
 * same way, so what stands there closes them all. Where the straight line meets the point of a
 * cushion, only the whole table can tell who gets by: slower.
 */
export function pathCheck({ question, scene }: Played): (option: Option) => boolean {
  const { kit, cutRad } = question;
  if (isClosedToObjectBall(scene, cutRad)) return () => false;
  if (isAtACushion(scene, question)) return (option) => pathInTheWay(scene, option).length === 0;
  const others = otherBalls(scene);
  if (others.length === 0) return () => true;
  const { objectXM, objectYM } = layoutOf(question, kit.ballRadiusM);
  const objectBall = objectBallAtRest(objectXM, objectYM);
  return ({ stroke }) => {
    return travel(strike(stroke, kit), 0, kit, [objectBall, ...others]).met === objectBall;
  };
}

type Played = Pick<RankQuestion, 'question' | 'scene'>;

function isAtACushion(scene: Scene, { distanceM }: Played['question']): boolean {
  const { position, headingRad, shape, kit } = scene;
  const cueBall = ballNamed(position, 'cue');
  if (cueBall === null) return false;
  const from = placeOf(cueBall);
  const to = {
    x: from.x + distanceM * Math.sin(headingRad),
    y: from.y + distanceM * Math.cos(headingRad),
  };
  return onStraightWay({ mover: 'cue', from, to }, [], shape, kit).length > 0;
}

function isClosedToObjectBall(scene: Scene, cutRad: number): boolean {
  const { position, goal, shape, kit, headingRad } = scene;
  const ball = ballNamed(position, goal.ball);
  const pocket = shape.pockets.find(({ name }) => name === goal.pocket);
  if (ball === null || pocket === undefined) return false;
  const way = wayToMouth(placeOf(ball), headingRad + cutRad, pocket);
  const others = without(position, 'cue', goal.ball);
  return onStraightWay(way, others, shape, kit).some(({ what }) => what !== 'jaw');
}

/** All but the two balls of the shot, as seen along its straight line from the cue ball. */
function otherBalls({ position, goal, headingRad }: Scene): readonly Obstacle[] {
  const cueBall = ballNamed(position, 'cue');
  if (cueBall === null) return [];
  const [sin, cos] = [Math.sin(headingRad), Math.cos(headingRad)];
  return without(position, 'cue', goal.ball).map(({ xM, yM }) => {
    const [dx, dy] = [xM - cueBall.xM, yM - cueBall.yM];
    return objectBallAtRest(dx * cos - dy * sin, dx * sin + dy * cos);
  });
}
