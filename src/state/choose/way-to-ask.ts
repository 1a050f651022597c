import type { Asked } from '../shot-field';
import type { AskedOf } from '../shot-model';

/** A way as Shot asks it, and which ball it plays into which pocket. */
export interface WayToAsk {
  readonly asked: Asked;
  readonly of: AskedOf;
}
