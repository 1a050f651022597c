import type { Point } from '../../diagram/canvas';
import type { InputName } from './tile-words';

/** A finger that drags a part of a drawing: what of the shot it sets, and where it is, px. */
export interface Finger {
  readonly sets: InputName;
  readonly at: Point;
}
