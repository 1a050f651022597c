import { axisShift, pivotBridge } from '../../direct/pivot-bridge';
import type { Kit } from '../../kit/kit';
import type { Stroke } from '../../stroke/stroke';
import { landingOf } from './landing';
import { BOTH_SIDES, CENTRE_HIT, SIDE, setup, spoken } from './set-up';
import type { Readings, Trial, TrialSetup } from './trial';
import { TRIAL_TRAITS } from './trial-traits';

const MAX_ROUNDS = 8;
/** On the mark to this, m. */
const ON_MARK_M = 1e-9;

/**
 * A bridge felt for in several strokes, until a pivot to the side still sends the ball through a
 * gate. How closely is our estimate.
 */
export const PIVOT = {
  name: 'pivot',
  ...TRIAL_TRAITS.pivot,
  predict: predictPivot,
  shots: ({ lengthM }) =>
    BOTH_SIDES.map((sign) => ({
      stroke: { ...CENTRE_HIT, side: sign * SIDE, ...spoken('firm') },
      setup: setup(lengthM, { distanceM: (3 / 8) * lengthM }),
    })),
  hangsOn: ['distanceM'],
} as const satisfies Trial;

/**
 * The bridge about which the cue can be pivoted to the side and still send the cue ball over a mark
 * straight ahead; null where there is none.
 */
export function predictPivot(kit: Kit, stroke: Stroke, setup: TrialSetup): Readings | null {
  const aimRad = aimAtMark(kit, stroke, setup.distanceM);
  if (aimRad === null) return null;
  const shiftM = axisShift(stroke.side, kit.ballRadiusM, kit.tipRadiusM);
  const bridgeM = pivotBridge(aimRad, shiftM, kit.ballRadiusM);
  return bridgeM === null ? null : { bridgeM };
}

/** The aim that sends the cue ball over the mark: each round turns it by the angle it missed by. */
function aimAtMark(kit: Kit, stroke: Stroke, distanceM: number): number | null {
  let aimRad = 0;
  for (let round = 0; round < MAX_ROUNDS; round++) {
    const crossing = landingOf(kit, { ...stroke, aimRad }, distanceM);
    if (crossing === null) return null;
    if (Math.abs(crossing.rightM) < ON_MARK_M) return aimRad;
    aimRad -= Math.atan(crossing.rightM / distanceM);
  }
  return aimRad;
}
