import type { Player } from '../../store/player';

/** Whether an invented player stood where this one stands, and nobody has been asked since. */
export function isStandIn({ madeOf10, wasAsked }: Player): boolean {
  return madeOf10 !== null && !wasAsked;
}

/**
 * Whom a chance is told for, in a sentence: "you", or a student's name.
 * @param longest what is longer is cut short
 */
export function forWords({ name }: Player, longest = 24): string {
  if (name.toLowerCase() === 'you') return 'you';
  return name.length > longest ? `${name.slice(0, longest - 1).trimEnd()}…` : name;
}
