import { layoutOf } from '../direct/layout';
import type { Shot } from '../direct/shot';
import { inputsOf } from '../goal/held-shot';
import type { Target } from '../goal/target';
import type { Kit } from '../kit/kit';
import { KIT_QUANTITIES, type KitCorrelation, type KitSpread } from '../kit/kit-spread';
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

/**
 * @param aimRad the solved aim of this shot on this kit
 * @param correlation left out: the quantities of the kit are independent
 */
export function roomForError(
  shot: Shot,
  kit: Kit,
  aimRad: number,
  target: Target,
  profile: StrokeProfile,
  spread: KitSpread,
  correlation?: KitCorrelation,
): RoomForError {
  const held = { shot, kit, target, layout: layoutOf(shot, kit.ballRadiusM) };
  const inputs = inputsOf(shot, aimRad);
  const windows = roomWindows(held, inputs);
  return {
    windows,
    wants: windows === null ? wantsOf(shot, kit, target) : null,
    certainty: certaintyOf(shot, kit, aimRad, spread, correlation),
    chance: chanceOf(held, inputs, profile, spread, correlation),
    chanceOnKnownKit: chanceOf(held, inputs, profile, KNOWN),
  };
}

function wantsOf(shot: Shot, kit: Kit, target: Target): RoomForError['wants'] {
  const speedMps = nearestSpeed(shot, kit, target);
  if (speedMps === null) return null;
  return speedMps > shot.speedMps ? 'firmer' : 'softer';
}
