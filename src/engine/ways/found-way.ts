import { Chains } from '../goal/chains';
import { type Goal, isDoubleKiss, isStep, type PlayedGoal } from '../goal/goal';
import { playLaid } from '../goal/laid-table';
import { lastLeg, playedOut } from '../goal/played-out';
import type { PositionShot } from '../goal/position-shot';
import type { Lost } from '../goal/task';
import type { KitQuantity } from '../kit/kit-spread';
import { normalBelow } from '../numerics/normal';
import { type LinearChance, linearChance } from '../plan/linear-chance';
import type { Way } from '../plan/way';
import type { StrokeProfile } from '../room/stroke-profile';
import type { Stroke } from '../stroke/stroke';
import type { TablePlay } from '../table/table-play';
import { playedWayOf } from './played-way';
import type { WaysAsked } from './ways-question';

/** A way that does what it says, as the search found it: plain data. */
export interface FoundWay {
  readonly goal: Goal;
  /** The cue's direction over the table, rad: 0 runs along y, right +. */
  readonly headingRad: number;
  /** Its aim is right + of the shot's straight line, or where there is none of the heading. */
  readonly stroke: Stroke;
  /** How often it goes if all hangs on the cue's direction: enough to choose what to look at. */
  readonly rough: number;
  /** The same by straight lines in all that strays; null: not worked out as yet. */
  readonly chance: LinearChance | null;
  readonly way: Way;
  /** Cue ball and object ball meet twice. */
  readonly doubleKiss: boolean;
  /** Null where no straight line is meant. */
  readonly shot: PositionShot | null;
  /** Whether the cue ball stays on the table when all is as meant. */
  readonly isClean: boolean;
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

/**
 * Plays a stroke with all balls, and tells the way if it does just what it says; else why it does not.
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
  const { kit, profile } = question;
  const chains = new Chains(laid.names);
  const names = laid.names;
  const number = names.indexOf(goal.ball);
  let did = false;
  const play = playLaid(laid, stroke, kit, {
    until: (event) => {
      if (event.kind === 'pocketed' && event.ball === number) {
        const via = chains.viaOf(number) ?? [];
        did =
          event.pocket === goal.pocket &&
          via.length === goal.via.length &&
          via.every((step, at) => isStep(step, goal.via[at] ?? step));
      }
      chains.take(event);
      return false;
    },
  });
  if (play === null) return 'other-way';
  const firstHit = names[chains.firstHit ?? -1];
  if (typeof firstHit !== 'number' || !asked.first.includes(firstHit)) return 'foul';
  if (!did) {
    const leg = lastLeg({ laid, goal }, stroke, kit, true);
    return typeof leg === 'string' ? leg : 'other-way';
  }
  return {
    goal,
    headingRad: stroke.aimRad,
    stroke: { ...stroke, aimRad: 0 },
    rough: roughChance(missPerRad, profile),
    chance: null,
    way: playedWayOf(asked, stroke, play),
    doubleKiss: isDoubleKiss(goal.via),
    shot: null,
    isClean: isOnTable(play),
  };
}

/** The tip strays with the direction, and other things stray too. */
const OTHERS = 1.5;

function roughChance(missPerRad: number, { directionRad }: StrokeProfile): number {
  return 2 * normalBelow(1 / Math.abs(OTHERS * missPerRad * directionRad)) - 1;
}

/** The same way with its chance by straight lines; null where it goes by a hair alone. */
export function screened(asked: WaysAsked, way: FoundWay): FoundWay | null {
  const { goal, headingRad, stroke } = way;
  if (way.chance !== null || goal.kind === 'direct') return way;
  const { laid, question } = asked;
  const { kit, profile, spread } = question;
  const task = playedOut({ laid, goal, headingRad }, stroke, kit);
  const chance = linearChance(task, kit, stroke, profile, spread, SWAYING);
  return chance && { ...way, chance };
}

function isOnTable({ balls }: TablePlay): boolean {
  const kind = balls[0]?.outcome.kind;
  return kind === 'rests' || kind === 'hangs';
}
