/** A place, m, or a direction, seen from above. */
export interface Point {
  readonly x: number;
  readonly y: number;
}
