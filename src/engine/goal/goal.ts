import type { PocketName } from '../table/pocket-shape';

/** What is to be done from a position: plain data, kept as a person chose it. */
export type Goal = Pot;

/** To send a ball into a pocket. */
export interface Pot {
  readonly kind: 'pot';
  readonly ball: number;
  readonly pocket: PocketName;
  /** What the ball meets on its way, in order: [] is a direct cut, the only way there is as yet. */
  readonly via: readonly [];
}

/** A direct cut of a ball into a pocket. */
export function directCut(ball: number, pocket: PocketName): Pot {
  return { kind: 'pot', ball, pocket, via: [] };
}
