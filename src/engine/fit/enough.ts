/**
 * How far an aim may be off for the object ball to leave within what its target allows, rad either
 * way: an aim turns the object ball by d/(2R cos φ) as much, for small errors.
 *
 * @param distanceM from the cue ball's centre to the ghost ball's
 * @param allowedRad how far from the target line the object ball may leave
 */
export function enoughAimRad(
  { distanceM, cutRad }: { readonly distanceM: number; readonly cutRad: number },
  allowedRad: number,
  ballRadiusM: number,
): number {
  return (allowedRad * 2 * ballRadiusM * Math.cos(cutRad)) / distanceM;
}

/** The distance up to which an aim that is off by so much, rad, still does; m. */
export function enoughDistanceM(
  cutRad: number,
  allowedRad: number,
  ballRadiusM: number,
  aimRad: number,
): number {
  return (allowedRad * 2 * ballRadiusM * Math.cos(cutRad)) / aimRad;
}
