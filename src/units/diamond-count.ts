import { DIAMONDS_ALONG } from '../engine/table/diamonds';

const ORDINALS = ['', 'first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh'] as const;

/** Which diamond of the long rail a spot is level with, to the nearest, from the break end. */
export function diamondAt(fromNoseM: number, bedLengthM: number): number {
  const nearest = Math.round((fromNoseM / bedLengthM) * DIAMONDS_ALONG);
  return Math.min(DIAMONDS_ALONG - 1, Math.max(1, nearest));
}

/** "first" to "seventh". */
export function ordinal(diamond: number): string {
  return ORDINALS[diamond] ?? `${diamond}th`;
}
