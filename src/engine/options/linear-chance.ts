import type { Kit } from '../model/kit';
import { normalBelow } from '../numerics/normal';
import { type HeldShot, type MissOrLost, missOfStroke, type StrokeInputs } from '../room/held-shot';
import { type KitQuantity, type KitSpread, kitMoved } from '../room/kit-spread';
import type { StrokeProfile } from '../room/stroke-profile';

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

/** A step for slopes, in standard deviations: wide enough to see past a kink. */
const STEP = 0.25;
/** The miss's deviation where a step either way loses the ball: as good as hopeless. */
const HOPELESS = 100;
/** What of the kit sways an aim most. */
const SWAYING: readonly KitQuantity[] = ['massRatio', 'slideFriction', 'ballFriction'];

/**
 * How often a stroke goes if the miss hangs on everything by straight lines, about a solved aim.
 * It knows nothing of strokes that lose the ball further off than a fraction of the scatter.
 *
 * @param inputs a stroke whose ball goes along the target line
 */
export function linearChance(
  held: HeldShot,
  inputs: StrokeInputs,
  profile: StrokeProfile,
  spread: KitSpread,
): LinearChance {
  const tip = profile.tipM / (held.kit.ballRadiusM + held.kit.tipRadiusM);
  const apart = Math.sqrt(1 - profile.together * profile.together);
  const offMiddle = missWhenTrue(held, inputs);
  const along = (moved: (sds: number) => Partial<StrokeInputs>) =>
    slopePerSd(offMiddle, (sds) => missOfStroke(held, { ...inputs, ...moved(sds) }));
  const ofKit = SWAYING.map((quantity) =>
    slopePerSd(offMiddle, (sds) => missOn(held, kitMoved(held.kit, spread, quantity, sds), inputs)),
  );
  const sds = {
    direction: along((by) => ({
      aimRad: inputs.aimRad + profile.directionRad * by,
      side: inputs.side + tip * profile.together * by,
    })),
    side: along((by) => ({ side: inputs.side + tip * apart * by })),
    height: along((by) => ({ height: inputs.height + tip * by })),
    elevation: along((by) => ({
      elevationRad: Math.abs(inputs.elevationRad + profile.elevationRad * by),
    })),
    speed: along((by) => ({ speedMps: inputs.speedMps * (1 + profile.speedShare * by) })),
    kit: Math.hypot(...ofKit),
  };
  const sd = Math.hypot(...Object.values(sds));
  return { share: normalBelow((1 - offMiddle) / sd) - normalBelow((-1 - offMiddle) / sd), sds };
}

/** A mouth is open evenly to either side of the target line unless the speed has a say in it. */
function missWhenTrue(held: HeldShot, inputs: StrokeInputs): number {
  if (held.target.kind === 'angle' || held.target.openings === undefined) return 0;
  const miss = missOfStroke(held, inputs);
  return typeof miss === 'number' ? miss : 0;
}

function missOn(held: HeldShot, kit: Kit, inputs: StrokeInputs): MissOrLost {
  return missOfStroke({ ...held, kit }, inputs);
}

/** One way alone where the other loses the ball. */
function slopePerSd(whenTrue: number, missAt: (sds: number) => MissOrLost): number {
  const [less, more] = [missAt(-STEP), missAt(STEP)];
  if (typeof less === 'number' && typeof more === 'number') return Math.abs(more - less) / 2 / STEP;
  if (typeof more === 'number') return Math.abs(more - whenTrue) / STEP;
  return typeof less === 'number' ? Math.abs(less - whenTrue) / STEP : HOPELESS;
}
