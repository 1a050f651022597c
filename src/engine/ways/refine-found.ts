import { playLaid } from '../goal/laid-table';
import { playedOut } from '../goal/played-out';
import type { Task } from '../goal/task';
import type { Kit } from '../kit/kit';
import type { KitQuantity } from '../kit/kit-spread';
import { fanAims } from '../plan/fan-of';
import { type LinearChance, linearChance, STRAY_SOURCES } from '../plan/linear-chance';
import type { FanPlay, RankedWay } from '../plan/ranked-way';
import { cueBallFate } from '../plan/rest-spread';
import { atUsualPace } from '../room/drawn-stroke';
import { roomWindows } from '../room/windows';
import type { TablePlay } from '../table/table-play';
import { directPotOf } from './direct-ways';
import { DRAWS, drawnWay, overTable } from './drawn-chance';
import type { FoundWay } from './found-way';
import { improved } from './improve';
import { askedFor, type WaysQuestion } from './ways-question';

/** A way worked out in full. */
export interface ToldWay
  extends RankedWay,
    Pick<FoundWay, 'goal' | 'headingRad' | 'doubleKiss' | 'shot'> {
  /** Which way the cue turns for a fuller hit of the first ball: 1 right, −1 left; 0: it is full. */
  readonly fullerSide: Task['thinSide'];
  /** Of the drawn strokes that go, how many go by just the way that is told, 0 to 1. */
  readonly asTold: number;
}

/** What a way is to do, and the kit as its stroke sees it. */
export function taskOf(question: WaysQuestion, way: FoundWay): { task: Task; kit: Kit } {
  const { goal, headingRad, stroke, shot } = way;
  if (shot !== null) return directPotOf(question, shot);
  if (goal.kind === 'direct') throw new RangeError('a direct way has its shot');
  const { laid } = askedFor(question);
  return { task: playedOut({ laid, goal, headingRad }, stroke, question.kit), kit: question.kit };
}

/** What of the kit sways a way off cushions or other balls. */
const SWAYING: readonly KitQuantity[] = [
  'massRatio',
  'slideFriction',
  'ballFriction',
  'rollFriction',
  'ballRestitution',
  'cushionRestitution',
  'cushionFriction',
];

/** Of a way that goes by a hair alone: no straight line tells what makes it hard. */
const BY_A_HAIR: LinearChance = {
  share: 0,
  sds: { direction: 0, side: 0, height: 0, elevation: 0, speed: 0, kit: 0 },
};

/** A way worked out in full, and what became of it, draw by draw; null where the tip slipped. */
export interface WorkedOut {
  readonly told: ToldWay;
  readonly all: readonly (TablePlay | null)[];
}

/** Works a way out in full, with the stroke near by that goes most often. */
export function refineFound(question: WaysQuestion, found: FoundWay): ToldWay {
  return workOut(question, improved(question, found)).told;
}

/**
 * Works a way out in full with the very stroke that it has.
 *
 * @param draws how many strokes of the player are drawn and played
 */
export function workOut(question: WaysQuestion, way: FoundWay, draws = DRAWS): WorkedOut {
  const asked = askedFor(question);
  const { profile, spread } = question;
  const { stroke, goal, headingRad, doubleKiss, shot } = way;
  const { task, kit } = taskOf(question, way);
  const linear = linearChance(task, kit, stroke, profile, spread, SWAYING) ?? BY_A_HAIR;
  const { all, going, ...drawn } = drawnWay(question, way, task.thinSide, draws);
  const meant = atUsualPace(overTable(way), profile);
  const { sds } = linear;
  const told = {
    goal,
    headingRad,
    doubleKiss,
    shot,
    fullerSide: task.thinSide,
    option: { place: 0, stroke, chance: linear },
    way: way.way,
    ...drawn,
    hardest: STRAY_SOURCES.reduce((a, b) => (sds[b] > sds[a] ? b : a)),
    windows: roomWindows(task, kit, stroke),
    ...cueBallFate(
      { shape: question.shape, zone: question.zone },
      all.filter((play) => play !== null),
      going.map((play) => ({ play, weight: 1 })),
      playLaid(asked.laid, meant, question.kit, { endsOnly: true }),
    ),
  };
  return { told, all };
}

/**
 * A way as it plays out when the cue points true, at either edge of what still goes, and as far again
 * beyond; its plays tell of the balls in the order of a laid table. The pace is the player's usual one.
 */
export function fanOfWay(question: WaysQuestion, told: ToldWay): readonly FanPlay[] {
  const { laid } = askedFor(question);
  const { option, headingRad, windows } = told;
  const stroke = atUsualPace(option.stroke, question.profile);
  const { aimRad } = stroke;
  const low = windows?.aimRad.low.value ?? aimRad - question.profile.directionRad;
  const high = windows?.aimRad.high.value ?? aimRad + question.profile.directionRad;
  const [thinRad, fullRad] = told.fullerSide < 0 ? [high, low] : [low, high];
  return fanAims(aimRad, thinRad, fullRad).flatMap(([hit, aim]) => {
    const play = playLaid(laid, { ...stroke, aimRad: headingRad + aim }, question.kit);
    return play === null ? [] : [{ hit, aimRad: aim, play }];
  });
}
