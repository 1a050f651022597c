import type { Random } from './seeded-random';

/** A standard normal draw. Source: Box and Muller 1958 (from memory). */
export function normalDraw(random: Random): number {
  return Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}
