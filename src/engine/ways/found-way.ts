import type { Goal, PlayedGoal } from '../goal/goal';
import { isDoubleKiss } from '../goal/kind-of-via';
import { playLaid } from '../goal/laid-table';
import { lastLeg } from '../goal/played-out';
import type { PositionShot } from '../goal/position-shot';
import type { Lost } from '../goal/task';
import { cueBallEnd } from '../plan/rest-spread';
import type { Way } from '../plan/way';
import { nearness } from '../plan/ways-to-zone';
import type { Stroke } from '../stroke/stroke';
import type { TablePlay } from '../table/table-play';
import { goesAsTold, isLegalHit } from './as-told';
import { playedWayOf } from './played-way';
import { roughChance } from './rough-chance';
import type { WaysAsked } from './ways-question';

/** A way that does what it says, as the search found it: plain data. */
export interface FoundWay {
  readonly goal: Goal;
  /** The cue's direction over the table, rad: 0 runs along y, right +. */
  readonly headingRad: number;
  /** Its aim is right + of the shot's straight line, or where there is none of the heading. */
  readonly stroke: Stroke;
  /** About how often it goes: enough to choose what to work out. */
  readonly rough: number;
  /** Of the miss, as a share of what is open, per rad that the cue turns; of a direct way NaN. */
  readonly missPerRad: number;
  readonly way: Way;
  /** Cue ball and object ball meet twice. */
  readonly doubleKiss: boolean;
  /** Null where no straight line is meant. */
  readonly shot: PositionShot | null;
  /** How well the cue ball ends when all is as meant, 0 to 1: on the table, and in the zone if any. */
  readonly ends: number;
}

/** A stroke played with all balls, beside what it should do. */
interface Tried {
  readonly play: TablePlay;
  /** The ball fell in its pocket, by just the way it should. */
  readonly did: boolean;
  /** A legal ball was touched first. */
  readonly isLegal: boolean;
}

/** @param stroke its aim is measured over the table; null: the engine does not take it */
export function tried(asked: WaysAsked, goal: Goal, stroke: Stroke): Tried | null {
  const play = playLaid(asked.laid, stroke, asked.question.kit);
  return play && { play, did: goesAsTold(asked, goal, play), isLegal: isLegalHit(asked, play) };
}

/**
 * The way of a stroke, if played with all balls it does just what it says; else why it does not.
 *
 * @param stroke its aim is measured over the table
 */
export function foundBy(
  asked: WaysAsked,
  goal: PlayedGoal,
  stroke: Stroke,
  missPerRad: number,
): FoundWay | Lost | 'foul' {
  const { laid, question } = asked;
  const played = tried(asked, goal, stroke);
  if (played === null) return 'other-way';
  if (!played.isLegal) return 'foul';
  if (!played.did) {
    const leg = lastLeg({ laid, goal }, stroke, question.kit, true);
    return typeof leg === 'string' ? leg : 'other-way';
  }
  return {
    goal,
    headingRad: stroke.aimRad,
    stroke: { ...stroke, aimRad: 0 },
    rough: roughChance(asked, goal, stroke, missPerRad),
    missPerRad,
    way: playedWayOf(asked, stroke, played.play),
    doubleKiss: isDoubleKiss(goal.via),
    shot: null,
    ends: endsOf(asked, played.play),
  };
}

/** A way that loses the cue ball is seldom wanted. */
const SCRATCHED = 0.1;

/** How well a play leaves the cue ball, 0 to 1. */
export function endsOf({ question }: WaysAsked, play: TablePlay): number {
  const kind = play.balls[0]?.outcome.kind;
  if (kind !== 'rests' && kind !== 'hangs') return SCRATCHED;
  const { zone } = question;
  return zone === null ? 1 : nearness(zone, cueBallEnd(play, question));
}

/** What a way that was found promises: how often it goes, and how well it leaves the cue ball. */
export function promiseOf({ rough, ends }: FoundWay): number {
  return rough * ends;
}
