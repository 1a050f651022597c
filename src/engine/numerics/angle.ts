/** To rad from degrees, and back. */
export const RAD_PER_DEG = Math.PI / 180;
export const DEG_PER_RAD = 180 / Math.PI;

/** The same direction within (−π, π], rad. */
export function wrapped(angleRad: number): number {
  const turn = 2 * Math.PI;
  const within = angleRad - turn * Math.round(angleRad / turn);
  return within <= -Math.PI ? within + turn : within;
}

/** Direction of a horizontal vector from the y axis, clockwise seen from above (right +), rad. */
export function bearing(x: number, y: number): number {
  return Math.atan2(x, y);
}

/**
 * The same to compare by, at a fifth of the cost: it rises with the bearing, is 0, ±1 and 2 where that
 * is 0, ±π/2 and π, and of opposite bearings adds up to 2.
 */
export function roughBearing(x: number, y: number): number {
  const share = x / (Math.abs(x) + Math.abs(y));
  if (y >= 0) return share;
  return x < 0 ? -2 - share : 2 - share;
}
