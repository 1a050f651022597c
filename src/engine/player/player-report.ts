import type { Kit } from '../kit/kit';
import type { KitSpread } from '../kit/kit-spread';
import type { StrokeProfile } from '../room/stroke-profile';
import { possibleResults } from './known-player';
import { knownProfile, spreadBeside } from './known-profile';
import {
  type KnownFigure,
  type LoggedShot,
  learn,
  type PlayerKnowledge,
  type SeenRest,
} from './learn';
import type { LevelShot } from './level-test';
import { type AskedShot, type PlainLine, plainLine, type Result, shotLine } from './shot-line';
import { type SomePlayers, somePlayers } from './some-players';
import { bendsAsSure } from './squirt-bends';
import { mostTelling } from './telling-shot';
import { type QuestionChances, questionChances } from './the-question';
import { type KnownBias, knownBias, knownStroke } from './what-is-known';

/** A shot that was played, as plain data. */
export interface PlayedShot extends AskedShot {
  /** Where it was aimed, from the straight line, rad, right +; null: by its solved aim. */
  readonly aimRad: number | null;
  /** Left and right of the target are taken for a cut too. */
  readonly result: Result;
  /** Whether to learn from it. */
  readonly counts: boolean;
  /** Where its cue ball was to stop, and did; told of one that went alone. */
  readonly rest?: SeenRest;
  /** That of an earlier report: it spares most of the work, and hangs on the shot alone. */
  readonly line?: PlainLine | null;
}

/** All there is to learn a player from, as plain data. */
export interface PlayerJob {
  /** How many of ten the player says to make of the question's shot; null: not said. */
  readonly madeOf10: number | null;
  /** Those of the question's shot. */
  readonly kit: Kit;
  readonly spread: KitSpread;
  /** The oldest first. */
  readonly shots: readonly PlayedShot[];
  /** That of an earlier report on the same kit and spread. */
  readonly question?: QuestionChances | null;
  /** Shots of the level test that are left, where the next one to play is wanted. */
  readonly candidates?: readonly Pick<LevelShot, 'line'>[];
}

/** Why a shot is not learnt from. */
export type NotLearnt =
  /** It is not to be. */
  | 'left-out'
  /** It has no aim on its kit, or does not go even as meant. */
  | 'no-aim'
  /** It cannot have had this result. */
  | 'no-such-result';

/** What is known of a player, as plain data to keep and to send. */
export interface KnownPlayer {
  /** How many shots were learnt from. */
  readonly shots: number;
  /** Of the line on the question's shot with their cue, direction and tip together, one deviation, rad. */
  readonly lineRad: KnownFigure;
  /** Steady errors. */
  readonly bias: KnownBias;
  /** The player for chances, ranking and the fan: in the middle, with those who may be the one. */
  readonly profile: StrokeProfile;
  /** What is not known of the kit beside that, in the place of the spread asked with. */
  readonly spread: KitSpread;
  /** For how far a chance may be off: see `chanceRange`. */
  readonly some: SomePlayers;
}

export interface PlayerReport {
  /** Null where the question's shot has no aim on the kit. */
  readonly known: KnownPlayer | null;
  /** Of each shot: null where it is learnt from. */
  readonly notLearnt: readonly (NotLearnt | null)[];
  /** Of each shot, to be given back with it; null where it has none. */
  readonly lines: readonly (PlainLine | null)[];
  /** To be given back. */
  readonly question: QuestionChances | null;
  /** The place of the candidate to play next; null: there is none. */
  readonly next: number | null;
}

/**
 * What became of a player's shots, and what it tells of the player. Never throws: a shot that cannot
 * be learnt from is told as such. With lines and question given back, 300 shots cost some half a
 * million likelihoods and no aim; choosing a level shot costs some 60,000 more.
 */
export function playerReport(job: PlayerJob): PlayerReport {
  const question = job.question ?? questionChances(job.kit, job.spread);
  const lines = job.shots.map((shot) => lineOf(shot));
  const notLearnt = job.shots.map((shot, index) => whyNot(shot, lines[index] ?? null));
  if (question === null) return { known: null, notLearnt, lines, question, next: null };
  const learnt = job.shots.filter((_, index) => notLearnt[index] === null);
  const shots = job.shots.flatMap((shot, index): LoggedShot[] => {
    const line = lines[index];
    if (!line || notLearnt[index] !== null) return [];
    const aimOffRad = shot.aimRad === null ? 0 : shot.aimRad - line.solvedRad;
    const { result, rest } = shot;
    const stopped = rest !== undefined && result === 'went' ? { rest } : {};
    return [{ line, aimOffRad, result: named(result, line), ...stopped }];
  });
  const cueSd = learnt.at(-1)?.spread.massRatio ?? job.spread.massRatio;
  const own = { ...question, line: onOwnCue(question.line, job.spread.massRatio, cueSd) };
  const made = job.madeOf10 === null ? null : { question: own, of10: job.madeOf10 };
  const knowledge = learn({ made, shots });
  const known = knownPlayer(knowledge, own, job.spread, cueSd, shots.length);
  const candidates = job.candidates ?? [];
  const best = mostTelling(knowledge, candidates, own.line);
  return { known, notLearnt, lines, question, next: best && candidates.indexOf(best) };
}

/**
 * The question as played with the cue of the newest shot, whose squirt is known better once it is
 * measured: a deviation of it is so much less.
 */
function onOwnCue(line: PlainLine, askedSd: number, cueSd: number): PlainLine {
  if (askedSd === 0) return line;
  return { ...line, squirt: bendsAsSure(line.squirt, askedSd / cueSd) };
}

/** @param cueSd of the cue's squirt, as its deviations are counted */
function knownPlayer(
  knowledge: PlayerKnowledge,
  { line }: QuestionChances,
  spread: KitSpread,
  cueSd: number,
  shots: number,
): KnownPlayer {
  const some = somePlayers(knowledge, line);
  return {
    shots,
    lineRad: knownStroke(knowledge, line).lineRad,
    bias: knownBias(knowledge),
    profile: knownProfile(knowledge, some, { massRatio: cueSd }),
    spread: spreadBeside(knowledge, spread),
    some,
  };
}

function lineOf(shot: PlayedShot): PlainLine | null {
  if (shot.line !== undefined) return shot.line;
  const line = shotLine(shot);
  return line && plainLine(line);
}

function whyNot(shot: PlayedShot, line: PlainLine | null): NotLearnt | null {
  if (!shot.counts) return 'left-out';
  if (line === null) return 'no-aim';
  return possibleResults(line).includes(named(shot.result, line)) ? null : 'no-such-result';
}

/** A ball that passes right of where it was cut to the right passes thin. */
function named(result: Result, { fullSide }: PlainLine): Result {
  if (fullSide === 0 || (result !== 'left' && result !== 'right')) return result;
  return (result === 'right') === fullSide > 0 ? 'thin' : 'full';
}
