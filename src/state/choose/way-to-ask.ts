import type { KeptDrill, SavedPosition } from '../../store/saved-position';
import type { Asked } from '../shot-field';
import type { AskedOf } from '../shot-model';

/** Where a way lies, and how it is played there. */
export interface WithWay
  extends Pick<SavedPosition, 'lengthM' | 'widthM' | 'balls' | 'goal' | 'zone'> {
  readonly drill: KeptDrill;
}

/** A way as Shot asks it, and which ball it plays into which pocket. */
export interface WayToAsk {
  readonly asked: Asked;
  readonly of: AskedOf;
}
