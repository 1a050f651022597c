import type { Task } from '../goal/task';
import type { Kit } from '../kit/kit';
import { type KitQuantity, type KitSpread, kitMoved } from '../kit/kit-spread';
import { normalBelow } from '../numerics/normal';
import { inPlay } from '../room/drawn-stroke';
import type { StrokeProfile } from '../room/stroke-profile';
import type { Stroke } from '../stroke/stroke';
import { type ArrivalSlope, arrivalSlope, leftOf, leftSdOnTarget, missSd } from './arrival-slopes';

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
 * @param swaying what of the kit is looked at
 */
export function linearChance(
  task: Task,
  asked: Kit,
  meant: Stroke,
  player: StrokeProfile,
  spread: KitSpread,
  swaying: readonly KitQuantity[] = SWAYING,
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
  const kit = swaying.map((quantity) =>
    arrivalSlope(whenTrue, (sds) => task.arrivalAt(kitMoved(known, spread, quantity, sds), stroke)),
  );
  const others = [elevation, speed, ...kit];
  const all = [direction, side, height, ...others];
  return {
    share:
      shareOnTarget(
        whenTrue.miss,
        { direction, side, height, others },
        player,
        profile,
        task.thinSide,
      ) * reaches(leftOf(whenTrue), leftSdOnTarget(all)),
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

/** What goes by the player, and all else. */
interface Strays {
  readonly direction: ArrivalSlope;
  readonly side: ArrivalSlope;
  readonly height: ArrivalSlope;
  readonly others: readonly ArrivalSlope[];
}

/**
 * In the mean over all who may be the player, each with strays and steady errors of their own.
 *
 * @param profile as in play, by which the strays are counted
 */
function shareOnTarget(
  miss: number,
  { direction, side, height, others }: Strays,
  { likely, steady, together }: StrokeProfile,
  profile: StrokeProfile,
  thinSide: Task['thinSide'],
): number {
  if (likely === undefined || steady === undefined) {
    return onTarget(miss, missSd([direction, side, height, ...others]));
  }
  const perTipM = side.miss / Math.sqrt(1 - profile.together ** 2) / profile.tipM;
  const turned = perTipM * profile.tipM * profile.together;
  const perRad = (direction.miss - turned) / profile.directionRad;
  const restSquare = missSd(others) ** 2;
  let sum = 0;
  for (const [directionRad, tipM, , aimRad, fullRad] of likely) {
    const tip = perTipM * tipM;
    const along = perRad * directionRad + tip * together;
    const apartSquare = tip * tip * (1 - together * together);
    const high = (height.miss * tipM) / profile.tipM;
    const off = aimRad - steady.aimRad + thinSide * (fullRad - steady.fullRad);
    const sd = Math.sqrt(along * along + apartSquare + high * high + restSquare);
    sum += onTarget(miss + perRad * off, sd);
  }
  return sum / likely.length;
}

function onTarget(miss: number, sd: number): number {
  return normalBelow((1 - miss) / sd) - normalBelow((-1 - miss) / sd);
}

/** A ball that has no mouth to reach has an infinite amount left. */
function reaches(left: number, sd: number): number {
  return Number.isFinite(left) ? normalBelow(left / sd) : 1;
}
