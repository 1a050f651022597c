import type { FaceMarks } from '../../diagram/tip-face';
import type { ShotModel } from '../../state/shot-model';

/** The contacts to mark on the cue ball's face: round figures of the unit in which they are told. */
export function faceMarks({ tipLimit, tipScale }: ShotModel): FaceMarks {
  return { limit: tipLimit, step: tipScale.value.markedRadii };
}
