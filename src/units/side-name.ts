export type SideName = 'inside' | 'outside' | 'left' | 'right' | 'none';

/**
 * What players call sidespin on a cut: inside when it is on the side the object ball goes to,
 * outside on the other. A straight shot has neither, so there it is left or right.
 * @param side tip contact, right +.
 * @param cutRad right +.
 */
export function sideName(side: number, cutRad: number): SideName {
  if (side === 0) return 'none';
  if (cutRad === 0) return side > 0 ? 'right' : 'left';
  return side > 0 === cutRad > 0 ? 'inside' : 'outside';
}
