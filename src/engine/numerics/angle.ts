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
