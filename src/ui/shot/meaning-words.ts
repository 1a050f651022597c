import type { AimResult } from '../../engine/direct/shot';
import { angleReading, inWords } from './answer-words';

/** Angles that read as nothing to a tenth of a degree, rad. */
const NOTHING_RAD = 0.05 * (Math.PI / 180);

/**
 * What would come of the shot with the cue pointed at the ghost ball, as the end of a sentence that
 * begins with "it": "sends the object ball 2.1° too far left".
 * @param result of that stroke
 * @param allowedRad how far off the target line the object ball may leave and still go; null where not known
 */
export function uncorrectedWords(
  result: AimResult,
  cutRad: number,
  allowedRad: number | null,
): string {
  if (!result.ok) return 'would miss the object ball';
  const { directionRad } = result.objectBall;
  if (directionRad === null) return 'would leave the object ball where it is';
  const offRad = directionRad - cutRad;
  if (Math.abs(offRad) < NOTHING_RAD) return 'would go the same way';
  const off = inWords(angleReading(offRad));
  const isOpen = allowedRad !== null && Math.abs(offRad) <= allowedRad;
  if (isOpen) return `still goes, the object ball ${off}`;
  return `sends the object ball ${off.replace('° ', '° too far ')}`;
}
