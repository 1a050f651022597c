import { DEG_PER_RAD } from '../engine/numerics/angle';
import {
  type Evidence,
  type KnownFigure,
  learn,
  type PlayerKnowledge,
} from '../engine/player/learn';
import type { PlainLine, ShotLine } from '../engine/player/shot-line';
import { mostTelling } from '../engine/player/telling-shot';
import { type TestShot, testShots } from '../engine/player/test-shots';
import { questionChances } from '../engine/player/the-question';
import {
  knownBias,
  knownChance,
  knownMassRatio,
  knownStroke,
} from '../engine/player/what-is-known';
import { answerFields } from './answer-fields';
import { checkKit } from './check-kit';
import { type DoorRefusal, isRefusal, notTaken, refusedAt, worded } from './door-refusal';
import { type Fields, isFields } from './json-fields';
import { lineOf, parseAsked, parseLogged } from './learn-shot';
import { kitFrom, kitNames, SHOT_NAMES } from './parse-request';
import { parseKitSd, parseMade } from './parse-room';
import type { KnownNames } from './unknown-names';

const TARGET_NAMES = ['distanceM', 'mouthM', 'halfAngleDeg'];
const ASKED_NAMES = ['id', ...SHOT_NAMES, 'kit', 'kitSd'];

/** Every name of a request to learn, and of the objects in it, but for a position's own. */
const KNOWN: KnownNames = {
  '': ['id', 'made', 'shots', 'ask', 'kit', 'kitSd'],
  ...kitNames(''),
  'shots[]': ['id', 'shot', 'aimAngleDeg', 'position', 'struck', 'result', 'scratch', 'cueBall'],
  'shots[].shot': ASKED_NAMES,
  'shots[].shot.target': TARGET_NAMES,
  'ask[]': ASKED_NAMES,
  'ask[].target': TARGET_NAMES,
};

/** More than anyone plays in a year of evenings. */
const MOST_SHOTS = 1000;
const MOST_ASKED = 50;

/**
 * Answers one line of a player's log with one line of what it tells of the player, both JSON: metres
 * and degrees, right +. Lines are counted from 1.
 */
export function answerLearn(line: string, lineNumber: number): string {
  return answerFields(line, lineNumber, KNOWN, answerOf);
}

function answerOf(fields: Fields): object {
  const kit = kitFrom(fields.kit);
  const problem = checkKit(kit);
  if (problem !== null) return worded(problem);
  const spread = parseKitSd(fields, kit);
  if ('ok' in spread) return spread;
  const question = questionChances(kit, spread);
  if (question === null) return notTaken('kit', 'one with which the question’s shot has an aim');
  const of10 = parseMade(fields);
  if (of10 !== null && typeof of10 !== 'number') return of10;
  const shots = parseList(fields.shots ?? [], 'shots', MOST_SHOTS, parseLogged);
  if (isRefusal(shots)) return shots;
  const asked = parseList(fields.ask ?? [], 'ask', MOST_ASKED, parseLine);
  if (isRefusal(asked)) return asked;
  const evidence: Evidence = { made: of10 === null ? null : { question, of10 }, shots };
  const knowledge = learn(evidence);
  const side = shots.find(({ line }) => line.stroke.side !== 0)?.line;
  return {
    ok: true,
    ...told(knowledge, question.line),
    ...(side ? { kit: { massRatio: knownMassRatio(knowledge, side) } } : {}),
    chances: asked.map((line) => knownChance(knowledge, line, question.line)),
    next: toldNext(mostTelling(knowledge, testShots(kit, spread), question.line)),
  };
}

/** A list of a request, or which of its entries cannot be taken. */
function parseList<T extends object>(
  given: unknown,
  field: string,
  most: number,
  parse: (one: Fields) => T | DoorRefusal,
): readonly T[] | DoorRefusal {
  if (!Array.isArray(given) || given.length > most) {
    return notTaken(field, `a list of at most ${most}`);
  }
  const taken: T[] = [];
  for (const [index, one] of given.entries()) {
    const at = `${field}[${index}]`;
    if (!isFields(one)) return notTaken(at, 'an object');
    const parsed = parse(one);
    if (isRefusal(parsed)) return refusedAt(at, parsed);
    taken.push(parsed);
  }
  return taken;
}

function parseLine(given: Fields): ShotLine | DoorRefusal {
  const asked = parseAsked(given);
  return isRefusal(asked) ? asked : lineOf(asked);
}

function told(knowledge: PlayerKnowledge, question: PlainLine): object {
  const { lineRad, directionRad, elevationRad, ...stroke } = knownStroke(knowledge, question);
  const { aimRad, fullRad, speedShare } = knownBias(knowledge);
  return {
    stroke: {
      lineDeg: degrees(lineRad),
      directionDeg: degrees(directionRad),
      ...stroke,
      elevationDeg: degrees(elevationRad),
    },
    bias: { aimDeg: degrees(aimRad), fullDeg: degrees(fullRad), speedShare },
  };
}

function degrees({ value, low, high }: KnownFigure): KnownFigure {
  return { value: value * DEG_PER_RAD, low: low * DEG_PER_RAD, high: high * DEG_PER_RAD };
}

/** As a lookup takes it; null where no shot tells anything. */
function toldNext(next: TestShot | null): object | null {
  if (next === null) return null;
  const { shot, target } = next;
  const { cutRad, elevationRad, ...plain } = shot;
  return {
    ...plain,
    cutDeg: Math.round(cutRad * DEG_PER_RAD),
    elevationDeg: Math.round(elevationRad * DEG_PER_RAD),
    target: target.kind === 'mouth' ? { distanceM: target.distanceM, mouthM: target.mouthM } : {},
  };
}
