/** The sum of the products of two lists, member by member; `b` is at least as long as `a`. */
export function dot(a: readonly number[], b: readonly number[]): number {
  return a.reduce((sum, value, i) => sum + value * (b[i] ?? 0), 0);
}
