import type { Task } from '../goal/task';
import type { Kit } from '../kit/kit';
import { type KitQuantity, type KitSpread, kitMoved } from '../kit/kit-spread';
import { normalBelow } from '../numerics/normal';
import { inPlay } from '../room/drawn-stroke';
import type { StrokeProfile } from '../room/stroke-profile';
import type { Stroke } from '../stroke/stroke';
import { arrivalSlope, leftOf, leftSdOnTarget, missSd } from './arrival-slopes';

/** What can send a ball astray: the parts of a stroke, and what is not known of the kit. */
export const STRAY_SOURCES = ['direction', 'side', 'height', 'elevation', 'speed', 'kit'] as const;
export type StraySource = (typeof STRAY_SOURCES)[number];

/** A chance by straight lines: quick, and good enough to choose by. */
export interface LinearChance {
  /** That the ball goes, 0 to 1. */
  readonly share: number;
  /** Of each source one standard deviation of the miss, as a share of what the target allows. */
  readonly sds: { readonly [S in StraySource]: number };
}

/** What of the kit sways an aim most, or how far a ball runs. */
const SWAYING: readonly KitQuantity[] = [
  'massRatio',
  'slideFriction',
  'ballFriction',
  'rollFriction',
];

/**
 * How often a stroke goes if everything hangs by straight lines on what strays, about a solved aim:
 * the miss, and what the ball has left of its speed where it has to fall. Null where the ball does
 * not get there even in the middle of what the player does.
 *
 * @param meant one whose ball goes along the target line
 */
export function linearChance(
  task: Task,
  asked: Kit,
  meant: Stroke,
  player: StrokeProfile,
  spread: KitSpread,
): LinearChance | null {
  const { stroke, profile, kit: known } = inPlay(meant, player, asked, task.thinSide);
  const whenTrue = task.arrivalAt(known, stroke);
  if (typeof whenTrue === 'string') return null;
  const tip = profile.tipM / (known.ballRadiusM + known.tipRadiusM);
  const apart = Math.sqrt(1 - profile.together * profile.together);
  const along = (moved: (sds: number) => Stroke) =>
    arrivalSlope(whenTrue, (sds) => task.arrivalAt(known, moved(sds)));
  const direction = along((by) => ({
    ...stroke,
    aimRad: stroke.aimRad + profile.directionRad * by,
    side: stroke.side + tip * profile.together * by,
  }));
  const side = along((by) => ({ ...stroke, side: stroke.side + tip * apart * by }));
  const height = along((by) => ({ ...stroke, height: stroke.height + tip * by }));
  const elevation = along((by) => ({
    ...stroke,
    elevationRad: Math.abs(stroke.elevationRad + profile.elevationRad * by),
  }));
  const speed = along((by) => ({
    ...stroke,
    speedMps: stroke.speedMps * (1 + profile.speedShare * by),
  }));
  const kit = SWAYING.map((quantity) =>
    arrivalSlope(whenTrue, (sds) => task.arrivalAt(kitMoved(known, spread, quantity, sds), stroke)),
  );
  const all = [direction, side, height, elevation, speed, ...kit];
  return {
    share: onTarget(whenTrue.miss, missSd(all)) * reaches(leftOf(whenTrue), leftSdOnTarget(all)),
    sds: {
      direction: missSd([direction]),
      side: missSd([side]),
      height: missSd([height]),
      elevation: missSd([elevation]),
      speed: missSd([speed]),
      kit: missSd(kit),
    },
  };
}

function onTarget(miss: number, sd: number): number {
  return normalBelow((1 - miss) / sd) - normalBelow((-1 - miss) / sd);
}

/** A ball that has no mouth to reach has an infinite amount left. */
function reaches(left: number, sd: number): number {
  return Number.isFinite(left) ? normalBelow(left / sd) : 1;
}
