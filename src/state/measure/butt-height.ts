import { buttHeightAt } from '../../engine/fit/butt-elevation';
import type { Kit } from '../../engine/model/kit';
import type { Attempt } from '../../store/attempt';

/** As ordinary cues are (common practice, no source). */
export const USUAL_CUE_LENGTH_M = 1.47;

/** How high above the cloth the middle of the butt's end is to be raised for a shot, m. */
export function buttHeightToRaise(
  { shot }: Pick<Attempt, 'shot'>,
  sizes: Pick<Kit, 'ballRadiusM' | 'tipRadiusM'>,
  cueLengthM: number,
): number {
  const { side, height, elevationRad } = shot.stroke;
  return buttHeightAt(elevationRad, { side, height, cueLengthM }, sizes);
}
