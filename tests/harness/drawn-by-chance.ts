import type { Kit } from '../../src/engine/kit/kit';
import { KIT_QUANTITIES, type KitSpread, kitMoved } from '../../src/engine/kit/kit-spread';
import type { StrokeProfile } from '../../src/engine/room/stroke-profile';
import type { Stroke } from '../../src/engine/stroke/stroke';
import { normalDraw } from './normal-draw';
import type { Random } from './seeded-random';

/** A stroke as it came out, by the plain way: every error drawn, the kit's too. */
export function drawnByChance(
  meant: Stroke,
  known: Kit,
  profile: StrokeProfile,
  spread: KitSpread,
  random: Random,
): { readonly stroke: Stroke; readonly kit: Kit } {
  const kit = KIT_QUANTITIES.filter((quantity) => spread[quantity] > 0).reduce(
    (moved, quantity) => kitMoved(moved, spread, quantity, normalDraw(random)),
    known,
  );
  const tip = profile.tipM / (kit.ballRadiusM + kit.tipRadiusM);
  const apart = Math.sqrt(1 - profile.together ** 2);
  const direction = normalDraw(random);
  const stroke = {
    aimRad: meant.aimRad + profile.directionRad * direction,
    side: meant.side + tip * (profile.together * direction + apart * normalDraw(random)),
    height: meant.height + tip * normalDraw(random),
    speedMps: Math.max(0.02, meant.speedMps * (1 + profile.speedShare * normalDraw(random))),
    elevationRad: Math.abs(meant.elevationRad + profile.elevationRad * normalDraw(random)),
  };
  return { stroke, kit };
}
