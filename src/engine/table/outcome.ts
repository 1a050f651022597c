import type { Kit } from '../kit/kit';
import { type Mover, stateOf } from './mover';
import { placeInMouth } from './pocket-shape';
import type { Outcome } from './table-play';
import type { TableShape } from './table-shape';

/** What has become of a ball by the end, s. */
export function outcomeOf(mover: Mover, endS: number, shape: TableShape, kit: Kit): Outcome {
  if (mover.gone !== null) return mover.gone;
  const { xM, yM } = stateOf(mover, endS, kit);
  if (mover.phase !== null) return { kind: 'unfinished', xM, yM };
  const pocket = shape.pockets.find((one) => {
    const { beyondM, asideM } = placeInMouth(one, xM, yM);
    return beyondM > 0 && asideM < one.mouthM / 2;
  });
  return pocket === undefined
    ? { kind: 'rests', xM, yM }
    : { kind: 'hangs', xM, yM, pocket: pocket.name };
}
