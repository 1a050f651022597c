import { buttHeightAt, elevationAt } from '../../engine/fit/butt-elevation';
import type { Kit } from '../../engine/kit/kit';
import type { Attempt } from '../../store/attempt';

/** As ordinary cues are (common practice, no source). */
export const USUAL_CUE_LENGTH_M = 1.47;

/** Further from the elevation asked for than hands and tapes go astray, rad (our judgement). */
const FAR_RAD = (4 * Math.PI) / 180;

/** How high above the cloth the middle of the butt's end is to be raised for a shot, m. */
export function buttHeightToRaise(
  { shot }: Pick<Attempt, 'shot'>,
  sizes: Pick<Kit, 'ballRadiusM' | 'tipRadiusM'>,
  cueLengthM: number,
): number {
  const { side, height, elevationRad } = shot.stroke;
  return buttHeightAt(elevationRad, { side, height, cueLengthM }, sizes);
}

/** The elevation that a height tells, rad, where that is far from the one asked for; else null. */
export function elevationFarOff(
  { shot }: Pick<Attempt, 'shot'>,
  buttHeightM: number,
  sizes: Pick<Kit, 'ballRadiusM' | 'tipRadiusM'>,
  cueLengthM: number,
): number | null {
  const { side, height, elevationRad } = shot.stroke;
  const told = elevationAt(buttHeightM, { side, height, cueLengthM }, sizes);
  return told !== null && told >= 0 && Math.abs(told - elevationRad) > FAR_RAD ? told : null;
}
