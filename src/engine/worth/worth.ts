import type { Goal, SafetyGoal } from '../goal/goal';
import { playLaid } from '../goal/laid-table';
import { atUsualPace } from '../room/drawn-stroke';
import type { TablePlay } from '../table/table-play';
import { DRAWS, doesGo, drawnOnTable, type Meant, overTable } from '../ways/drawn-chance';
import { askedFor, type WaysQuestion } from '../ways/ways-question';
import { StrokeJudge } from './stroke-worth';
import { type MeantHit, meantHit } from './thin-or-full';
import {
  type After,
  afterOf,
  type JudgedStroke,
  type Miss,
  mean,
  missOf,
  shareOf,
} from './worth-parts';

/** What a way is worth, and its parts: plain data, shares of the drawn strokes. */
export interface Worth {
  /** 0 to 1: see {@link worthFrom}. */
  readonly worth: number;
  /** Standard error of that, as of independent draws: the lattice's is less. */
  readonly worthError: number;
  /** That the way goes; of a safety, that it is no foul. */
  readonly goes: number;
  /** Standard error of that, as of independent draws. */
  readonly goesError: number;
  /** That the last ball falls. */
  readonly wins: number;
  /** Null of a safety, and where no stroke that goes is followed by another. */
  readonly after: After | null;
  /** Null where no stroke passes the turn. */
  readonly miss: Miss | null;
  /** That the cue ball is pocketed or leaves the table. */
  readonly scratch: number;
}

/** A way, as far as its worth hangs on it. */
export interface WorthWay extends Meant {
  readonly goal: Goal | SafetyGoal;
}

/**
 * Draws strokes of a way, plays them to rest on the whole table and tells what they are worth. It hangs
 * on its arguments alone, whoever works it out.
 *
 * @param draws how many strokes are drawn
 */
export function worthOf(question: WaysQuestion, way: WorthWay, draws = DRAWS): Worth {
  const { fullerSide } = hitOf(question, way);
  return worthFrom(question, way, drawnOnTable(question, way, fullerSide, draws));
}

/** How a way is meant to hit its first ball, at the player's usual pace. */
function hitOf(question: WaysQuestion, way: WorthWay): MeantHit {
  const { laid } = askedFor(question);
  const stroke = atUsualPace(overTable(way), question.profile);
  return meantHit(laid, playLaid(laid, stroke, question.kit));
}

/**
 * What a way is worth: the mean, over its drawn strokes, of 1 where the last ball falls, of how the game stands
 * by the best next shot while it is still the player's turn, and of 1 less how it stands for the other player
 * where it is not, with the ball in hand after a foul. How it stands is the share of games won, see
 * `Standing`, as if the next ball but one ended it. The other player is taken to play as well.
 *
 * @param all a play for each draw; null where the tip slipped
 */
export function worthFrom(
  question: WaysQuestion,
  way: WorthWay,
  all: readonly (TablePlay | null)[],
): Worth {
  const asked = askedFor(question);
  const judge = new StrokeJudge(question);
  const { goal } = way;
  const hit = hitOf(question, way);
  const strokes = all.map((play): JudgedStroke => {
    const worth = judge.judge(play);
    const isSafe = worth.theirs?.isFoul !== true;
    const goes = goal.kind === 'safety' ? isSafe : play !== null && doesGo(asked, { goal }, play);
    return { ...worth, goes, side: hit.sideOf(play) };
  });
  const worth = mean(strokes.map(({ value }) => value));
  const square = mean(strokes.map(({ value }) => (value - worth) ** 2));
  const goes = shareOf(strokes, ({ goes: does }) => does);
  return {
    worth,
    worthError: Math.sqrt(square / Math.max(1, all.length)),
    goes,
    goesError: Math.sqrt((goes * (1 - goes)) / Math.max(1, all.length)),
    wins: shareOf(strokes, ({ hasWon }) => hasWon),
    after: goal.kind === 'safety' ? null : afterOf(strokes),
    miss: missOf(strokes),
    scratch: shareOf(all, isScratch),
  };
}

function isScratch(play: TablePlay | null): boolean {
  const kind = play?.balls[0]?.outcome.kind;
  return kind === 'pocketed' || kind === 'off-table';
}
