/** Longer than a cue (1.47 m, 58 in; common practice, no source), a bridge is none. */
const LONGEST_BRIDGE_M = 1.5;

/**
 * The bridge at which turning the cue about the bridge hand, from a centre-ball address on the
 * ghost ball, gives both the wanted aim and the wanted shift of the cue's axis.
 *
 * Turning by γ about a bridge b behind the ball's near surface shifts the axis, at the ball's
 * centre, by (b + R) sin γ to the same side. Plane geometry, exact.
 *
 * @param aimRad wanted aim, right +
 * @param axisShiftM wanted shift of the axis, right +: side · (R + tip radius)
 * @returns m from the ball's near surface; null when no bridge a cue allows does it
 */
export function pivotBridge(
  aimRad: number,
  axisShiftM: number,
  ballRadiusM: number,
): number | null {
  const bridgeM = axisShiftM / Math.sin(aimRad) - ballRadiusM;
  return bridgeM > 0 && bridgeM <= LONGEST_BRIDGE_M ? bridgeM : null;
}

/**
 * Shift of the cue's axis from the ball's centre for a contact at `side` (fraction of R), m: the
 * tip is domed, so it touches nearer the centre than the axis points. Geometry, exact.
 */
export function axisShift(side: number, ballRadiusM: number, tipRadiusM: number): number {
  return side * (ballRadiusM + tipRadiusM);
}
