import { arrivalOfStroke, type HeldShot, type StrokeInputs } from '../goal/held-shot';
import { type KitQuantity, type KitSpread, kitMoved } from '../kit/kit-spread';
import { normalBelow } from '../numerics/normal';
import type { StrokeProfile } from '../room/stroke-profile';
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
 * not get there even when all is as meant.
 *
 * @param inputs a stroke whose ball goes along the target line
 */
export function linearChance(
  held: HeldShot,
  inputs: StrokeInputs,
  profile: StrokeProfile,
  spread: KitSpread,
): LinearChance | null {
  const whenTrue = arrivalOfStroke(held, inputs);
  if (typeof whenTrue === 'string') return null;
  const tip = profile.tipM / (held.kit.ballRadiusM + held.kit.tipRadiusM);
  const apart = Math.sqrt(1 - profile.together * profile.together);
  const along = (moved: (sds: number) => Partial<StrokeInputs>) =>
    arrivalSlope(whenTrue, (sds) => arrivalOfStroke(held, { ...inputs, ...moved(sds) }));
  const direction = along((by) => ({
    aimRad: inputs.aimRad + profile.directionRad * by,
    side: inputs.side + tip * profile.together * by,
  }));
  const side = along((by) => ({ side: inputs.side + tip * apart * by }));
  const height = along((by) => ({ height: inputs.height + tip * by }));
  const elevation = along((by) => ({
    elevationRad: Math.abs(inputs.elevationRad + profile.elevationRad * by),
  }));
  const speed = along((by) => ({ speedMps: inputs.speedMps * (1 + profile.speedShare * by) }));
  const kit = SWAYING.map((quantity) =>
    arrivalSlope(whenTrue, (sds) =>
      arrivalOfStroke({ ...held, kit: kitMoved(held.kit, spread, quantity, sds) }, inputs),
    ),
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
