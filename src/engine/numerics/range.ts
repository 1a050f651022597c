/** A closed interval of accepted values. */
export interface Range {
  readonly min: number;
  readonly max: number;
}

/** True where the value is a number within the range; NaN and strings never are. */
export function isWithin(range: Range, value: unknown): value is number {
  return typeof value === 'number' && value >= range.min && value <= range.max;
}

/** The value, or the end of the range that it lies beyond. NaN stays NaN. */
export function heldWithin({ min, max }: Range, value: number): number {
  return Math.min(max, Math.max(min, value));
}
