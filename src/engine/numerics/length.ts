/** Length of a vector. `Math.hypot` guards against overflow, which takes ten times as long. */
export function length(x: number, y: number): number {
  return Math.sqrt(x * x + y * y);
}
