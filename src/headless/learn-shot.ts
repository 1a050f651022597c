import type { Shot } from '../engine/direct/shot';
import { solveAim } from '../engine/direct/solve-aim';
import { shotFrom as shotFromPosition } from '../engine/goal/shot-from-position';
import { kitAlong } from '../engine/kit/kit-along';
import { RAD_PER_DEG } from '../engine/numerics/angle';
import type { LoggedShot } from '../engine/player/learn';
import { RESULTS } from '../engine/player/results';
import { type AskedShot, type Result, type ShotLine, shotLine } from '../engine/player/shot-line';
import { noShotWords } from '../words/no-shot-words';
import { checkKit } from './check-kit';
import { type DoorRefusal, isRefusal, notTaken, refusedAt, worded } from './door-refusal';
import { type Fields, fieldsOf, isFields, numberOf } from './json-fields';
import { parseGoal } from './options-play';
import { kitFrom, shotFrom } from './parse-request';
import { parseKitSd, parseTarget } from './parse-room';
import { parseGivenTable } from './play-given';

/** A shot of a request as it was asked, and where it was aimed; null: by its solved aim. */
interface Given {
  readonly asked: AskedShot;
  readonly aimRad: number | null;
}

/** A shot of a log, with all of it that its line hangs on. */
export interface LoggedLine extends LoggedShot {
  readonly line: ShotLine;
}

/** One line of a log, or why it cannot be learnt from. */
export function parseLogged(given: Fields): LoggedLine | DoorRefusal {
  const shot = given.position === undefined ? aloneShot(given) : positionShot(given);
  if (isRefusal(shot)) return shot;
  const line = lineOf(shot.asked);
  if (isRefusal(line)) return refusedAt(given.position === undefined ? 'shot' : 'struck', line);
  const { result } = given;
  const possible: readonly Result[] = ['went', ...line.passes, 'short', 'untouched'];
  const named = RESULTS.find((name) => name === result && possible.includes(name));
  if (named === undefined) return notTaken('result', `one of ${[...new Set(possible)].join(', ')}`);
  const aimOffRad = shot.aimRad === null ? 0 : shot.aimRad - line.stroke.aimRad;
  return { line, aimOffRad, result: named };
}

/** The line of a shot, or why it has none. */
export function lineOf(asked: AskedShot): ShotLine | DoorRefusal {
  const answer = solveAim(asked.shot, asked.kit);
  if (!answer.ok) return worded(answer);
  return shotLine(asked) ?? notTaken('target', 'one that the shot reaches as it is meant');
}

/** Told as a lookup is. */
function aloneShot(given: Fields): Given | DoorRefusal {
  const { shot, aimAngleDeg } = given;
  if (!isFields(shot)) return notTaken('shot', 'an object, as a lookup is');
  const asked = parseAsked(shot);
  if (isRefusal(asked)) return refusedAt('shot', asked);
  if (aimAngleDeg === undefined) return { asked, aimRad: null };
  const aimRad = numberOf(aimAngleDeg) * RAD_PER_DEG;
  if (!(Math.abs(aimRad) < Math.PI / 2)) return notTaken('aimAngleDeg', 'between -90 and 90');
  return { asked, aimRad };
}

/** A shot with its target and kit, as in a lookup that wants the chance. */
export function parseAsked(fields: Fields): AskedShot | DoorRefusal {
  const kit = kitFrom(fields.kit);
  const problem = checkKit(kit);
  if (problem !== null) return worded(problem);
  const target = parseTarget(fields, kit);
  if ('ok' in target) return target;
  const spread = parseKitSd(fields, kit);
  if ('ok' in spread) return spread;
  return { shot: shotFrom(fields), target, kit, spread };
}

/** Told by where the balls lay, and what the cue was meant to do. */
function positionShot(given: Fields): Given | DoorRefusal {
  const position = fieldsOf(given.position);
  const { struck } = given;
  if (!isFields(struck)) return notTaken('struck', 'an object with headingDeg and the stroke');
  const table = parseGivenTable(position);
  if (isRefusal(table)) return refusedAt('position', table);
  const goal = parseGoal(position.play, table.shape);
  if (isRefusal(goal)) return refusedAt('position', goal);
  const spread = parseKitSd(position, table.kit);
  if ('ok' in spread) return refusedAt('position', spread);
  const found = shotFromPosition(table.balls, goal, table.shape, table.kit);
  if (!found.ok)
    return { ok: false, reason: found.reason, ...noShotWords(found), field: 'position' };
  const stroke: Shot = { ...shotFrom(struck), distanceM: found.distanceM, cutRad: found.cutRad };
  const kit = kitAlong(table.kit, found.headingRad);
  const headingRad = numberOf(struck.headingDeg) * RAD_PER_DEG;
  const turned = headingRad - found.headingRad;
  const aimRad = Math.atan2(Math.sin(turned), Math.cos(turned));
  if (!Number.isFinite(aimRad)) return notTaken('struck.headingDeg', 'a number');
  return { asked: { shot: stroke, target: found.target, kit, spread }, aimRad };
}
