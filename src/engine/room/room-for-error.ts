import type { TwoBalls } from '../direct/shot';
import { directPot } from '../goal/direct-pot';
import type { Target } from '../goal/target';
import type { Task } from '../goal/task';
import type { Kit } from '../kit/kit';
import { KIT_QUANTITIES, type KitCorrelation, type KitSpread } from '../kit/kit-spread';
import type { Stroke } from '../stroke/stroke';
import { type Certainty, certaintyOf } from './certainty';
import { type Chance, chanceOf } from './chance';
import { nearestSpeed } from './nearest-speed';
import type { StrokeProfile } from './stroke-profile';
import { type RoomWindows, roomWindows } from './windows';

/** How far an answered shot may be off, how sure its aim is, and how often it goes. */
export interface RoomForError {
  /** Null where the ball does not go even when all is as meant: it stops short of the target. */
  readonly windows: RoomWindows | null;
  /** Where it does not go as meant: what would make it; null where no speed would. */
  readonly wants: 'firmer' | 'softer' | null;
  readonly certainty: Certainty;
  /** Counting the player's scatter and what is not known of the kit. */
  readonly chance: Chance;
  /** Counting the player's scatter alone: what measuring the kit could bring it to. */
  readonly chanceOnKnownKit: Chance;
}

const KNOWN = Object.fromEntries(KIT_QUANTITIES.map((quantity) => [quantity, 0])) as Record<
  (typeof KIT_QUANTITIES)[number],
  number
> satisfies KitSpread;

/** What the room for error of a stroke is worked out from. */
export interface RoomQuestion {
  /** Where the balls lie. */
  readonly balls: TwoBalls;
  readonly target: Target;
  readonly kit: Kit;
  /** With its solved aim. */
  readonly stroke: Stroke;
  readonly profile: StrokeProfile;
  readonly spread: KitSpread;
  /** What of that counts as chance; left out: all of it. */
  readonly chanceSpread?: KitSpread;
  /** Left out: the quantities of the kit are independent. */
  readonly correlation?: KitCorrelation;
}

export function roomForError(question: RoomQuestion): RoomForError {
  const { balls, target, kit, stroke, profile, spread, correlation } = question;
  const { chanceSpread = spread } = question;
  const task = directPot(balls, target, kit.ballRadiusM);
  const windows = roomWindows(task, kit, stroke);
  return {
    windows,
    wants: windows === null ? wantsOf(task, kit, stroke) : null,
    certainty: certaintyOf(task, kit, stroke, spread, correlation),
    chance: chanceOf(task, kit, stroke, profile, chanceSpread, correlation),
    chanceOnKnownKit: chanceOf(task, kit, stroke, profile, KNOWN),
  };
}

function wantsOf(task: Task, kit: Kit, stroke: Stroke): RoomForError['wants'] {
  const speedMps = nearestSpeed(task, kit, stroke);
  if (speedMps === null) return null;
  return speedMps > stroke.speedMps ? 'firmer' : 'softer';
}
