import type { Kit } from '../kit/kit';

/** A cue laid on the ball: where its tip touches, as in a shot, and how long it is. */
export interface CueOnBall {
  readonly side: number;
  readonly height: number;
  /** From the end of the tip to the end of the butt, m. */
  readonly cueLengthM: number;
}

type Sizes = Pick<Kit, 'ballRadiusM' | 'tipRadiusM'>;

/**
 * How high above the cloth the middle of the butt's end is at an elevation θ, m:
 * h = R + a cos θ + b sin θ, with a = (R + r)·height and b = L + (R + r)·√(1 − side² − height²) − r.
 *
 * The tip's dome, of radius r, touches the ball at the contact point, so its centre lies R + r from
 * the ball's; the cue runs from the dome's end through that centre and is L long. Plain geometry.
 */
export function buttHeightAt(elevationRad: number, cue: CueOnBall, sizes: Sizes): number {
  const { across, along } = leversOf(cue, sizes);
  return sizes.ballRadiusM + across * Math.cos(elevationRad) + along * Math.sin(elevationRad);
}

/**
 * The elevation at which the middle of the butt's end is so high above the cloth, rad; − where the
 * butt would be lower than on a level cue. Null where no cue of this length reaches that height.
 */
export function elevationAt(buttHeightM: number, cue: CueOnBall, sizes: Sizes): number | null {
  const { across, along } = leversOf(cue, sizes);
  const sine = (buttHeightM - sizes.ballRadiusM) / Math.hypot(across, along);
  if (!(Math.abs(sine) <= 1)) return null;
  return Math.asin(sine) - Math.atan2(across, along);
}

/** From the ball's centre to the butt, along the cue and square to it in its upright plane, m. */
function leversOf({ side, height, cueLengthM }: CueOnBall, { ballRadiusM, tipRadiusM }: Sizes) {
  const centres = ballRadiusM + tipRadiusM;
  const depth = Math.sqrt(Math.max(0, 1 - side * side - height * height));
  return { across: centres * height, along: cueLengthM + centres * depth - tipRadiusM };
}
