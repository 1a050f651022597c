import { aimOffsetM } from '../../diagram/aim-offset';
import { strokeOf } from '../../engine/direct/shot';
import { solveAim } from '../../engine/direct/solve-aim';
import { enoughDistanceM } from '../../engine/fit/enough';
import { allowedRad } from '../../engine/goal/target';
import { KIT_QUANTITIES } from '../../engine/kit/kit-spread';
import { certaintyOf } from '../../engine/room/certainty';
import type { LaidShot, Pocket, Preferences } from '../../store/records';
import type { KnownAlong } from './known-along-shot';

/** What is to be aimed at, and how the aim is told. */
export interface AimAsked {
  readonly shot: LaidShot;
  readonly pocket: Pocket;
  readonly lead: Preferences['lead'];
}

/** What readings did to the aim of a shot, m at the ball that leads. */
export interface AimGain {
  /** How far right of where it was; left is −. */
  readonly shiftM: number;
  /** One standard deviation, before and now. */
  readonly beforeSdM: number;
  readonly nowSdM: number;
  /** To the ghost ball: up to there it is within what the pocket forgives two times in three. */
  readonly enoughM: number;
  /** Whether that is as far as this shot. */
  readonly isEnough: boolean;
}

/** Null where the shot has no aim, on the kit as it was known or as it is. */
export function aimGain(
  { shot, pocket, lead }: AimAsked,
  earlier: KnownAlong,
  now: KnownAlong,
): AimGain | null {
  const [before, present] = [aimOf(shot, earlier), aimOf(shot, now)];
  if (before === null || present === null) return null;
  const { ballRadiusM } = now.kit;
  const at = (aimRad: number) => aimOffsetM(shot, ballRadiusM, lead, aimRad);
  const allowed = allowedRad({ kind: 'mouth', ...pocket }, ballRadiusM);
  const enoughM = enoughDistanceM(shot.cutRad, allowed, ballRadiusM, present.sdRad);
  return {
    shiftM: at(present.aimRad) - at(before.aimRad),
    beforeSdM: at(before.aimRad + before.sdRad) - at(before.aimRad),
    nowSdM: at(present.aimRad + present.sdRad) - at(present.aimRad),
    enoughM,
    isEnough: enoughM >= shot.distanceM,
  };
}

/** The aim and one standard deviation of it, rad. */
function aimOf(shot: LaidShot, { kit, spread, correlation }: KnownAlong) {
  const answer = solveAim(shot, kit);
  if (!answer.ok) return null;
  const { aimRad } = answer;
  const task = {
    quantities: KIT_QUANTITIES,
    aims: (moved: typeof kit) => {
      const solved = solveAim(shot, moved);
      return solved.ok ? [solved.aimRad] : [];
    },
  };
  const { aimSdRad } = certaintyOf(task, kit, strokeOf(shot, aimRad), spread, correlation);
  return { aimRad, sdRad: aimSdRad };
}
