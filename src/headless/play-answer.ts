import { INPUT_RANGES } from '../engine/direct/input-ranges';
import type { Kit } from '../engine/kit/kit';
import { ballNamed, without } from '../engine/lie/balls-of';
import type { NamedBall } from '../engine/lie/position';
import { endState } from '../engine/motion/phase';
import { RAD_PER_DEG } from '../engine/numerics/angle';
import { isWithin } from '../engine/numerics/range';
import type { Stroke } from '../engine/stroke/stroke';
import { playTable } from '../engine/table/play-table';
import type { BallRun, TableEvent, TablePlay, TableRefusal } from '../engine/table/table-play';
import { tableRefusalWords } from '../words/no-shot-words';
import { answerFields } from './answer-fields';
import { type DoorRefusal, isRefusal, notTaken, refusedAt } from './door-refusal';
import { type Fields, isFields, numberOf } from './json-fields';
import { kitNames } from './parse-request';
import { parseGivenTable, TABLE_NAMES } from './play-given';
import type { KnownNames } from './unknown-names';

/** Every name of a request, and of the objects in it. */
const KNOWN: KnownNames = {
  '': ['id', 'table', 'balls', 'stroke', 'kit'],
  ...TABLE_NAMES,
  stroke: ['headingDeg', 'side', 'height', 'elevationDeg', 'speedMps'],
  ...kitNames(''),
};

const TURN_DEG = 360;

/**
 * Plays the stroke of one line on its table and answers with one line of what became of every ball,
 * both JSON: metres, seconds and degrees. Lines are counted from 1.
 */
export function answerPlay(line: string, lineNumber: number): string {
  return answerFields(line, lineNumber, KNOWN, answerOf);
}

function answerOf(fields: Fields): object {
  const given = parseGivenTable(fields);
  if (isRefusal(given)) return given;
  const stroke = parseStroke(fields.stroke);
  if (isRefusal(stroke)) return refusedAt('stroke', stroke);
  const cueBall = ballNamed(given.balls, 'cue');
  const balls = [...(cueBall === null ? [] : [cueBall]), ...without(given.balls, 'cue')];
  const play = playTable(balls, stroke, given.kit, given.shape);
  return play.ok ? told(play, balls, given.kit) : toldRefusal(play);
}

/** The stroke of a request; its ranges are the engine's. */
function parseStroke(given: unknown): Stroke | DoorRefusal {
  if (!isFields(given)) return notTaken('headingDeg', 'a number of degrees');
  const { headingDeg } = given;
  if (!isWithin({ min: -TURN_DEG, max: TURN_DEG }, headingDeg)) {
    return notTaken('headingDeg', `a number from ${-TURN_DEG} to ${TURN_DEG}`);
  }
  const stroke = {
    aimRad: headingDeg * RAD_PER_DEG,
    side: numberOf(given.side),
    height: numberOf(given.height),
    elevationRad: numberOf(given.elevationDeg) * RAD_PER_DEG,
    speedMps: numberOf(given.speedMps),
  };
  const names = ['side', 'height', 'elevationRad', 'speedMps'] as const;
  const wrong = names.find((name) => !isWithin(INPUT_RANGES[name], stroke[name]));
  return wrong === undefined ? stroke : outside(wrong);
}

function outside(name: 'side' | 'height' | 'elevationRad' | 'speedMps'): DoorRefusal {
  const { min, max } = INPUT_RANGES[name];
  if (name !== 'elevationRad') return notTaken(name, `a number from ${min} to ${max}`);
  return notTaken(
    'elevationDeg',
    `a number from ${min / RAD_PER_DEG} to ${Math.round(max / RAD_PER_DEG)}`,
  );
}

function toldRefusal(refusal: TableRefusal): object {
  return { ok: false, reason: refusal.reason, ...tableRefusalWords(refusal) };
}

function told(play: TablePlay, balls: readonly NamedBall[], kit: Kit): object {
  const nameOf = (number: number) => balls[number]?.name ?? null;
  return {
    ok: true,
    endS: play.endS,
    complete: play.complete,
    balls: play.balls.map((run, number) => ({
      name: nameOf(number),
      outcome: run.outcome,
      path: cornersOf(run, kit),
    })),
    events: play.events.map((event) => toldEvent(event, nameOf)),
  };
}

function toldEvent(event: TableEvent, nameOf: (number: number) => unknown): object {
  const { ball, ...rest } = event;
  const named = { ...rest, ball: nameOf(ball) };
  return event.kind === 'hits-ball' ? { ...named, other: nameOf(event.other) } : named;
}

/** Where each piece of a ball's way begins, and where the last one ends. */
function cornersOf({ from, phases }: BallRun, kit: Kit): readonly object[] {
  const starts = phases.map(({ start, startS, motion }) => corner(start, startS, motion));
  const last = phases.at(-1);
  if (last === undefined) return [corner({ ...from, zM: 0 }, 0, null)];
  const end = endState(last);
  const isStill = Math.hypot(end.vx, end.vy) === 0 && end.zM < kit.ballRadiusM;
  return [...starts, corner(end, last.startS + last.durationS, isStill ? null : last.motion)];
}

function corner(
  { xM, yM, zM }: { readonly xM: number; readonly yM: number; readonly zM: number },
  timeS: number,
  motion: string | null,
): object {
  return { timeS, xM, yM, heightM: zM, motion };
}
