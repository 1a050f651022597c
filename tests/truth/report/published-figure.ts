import type { Subject } from './subject';

/** How a figure came to us. */
export type Tag =
  /** Seen in the source's own text. */
  | 'read'
  /** Quoted by others; the source itself was not seen. */
  | 'second-hand'
  /** Recalled, not read. */
  | 'from memory'
  /** Follows from a law without further input; worked out by hand. */
  | 'worked out'
  | 'common practice';

/** One figure that somebody other than the code under test vouches for. */
export interface PublishedFigure {
  /** The case, in a few words. */
  readonly name: string;
  readonly expected: number;
  /** Absolute: half the last digit given, or what the source can carry. */
  readonly tolerance: number;
  readonly of: (subject: Subject) => number;
}

/** Figures of one law from one source. */
export interface FigureTable {
  readonly law: string;
  readonly source: string;
  readonly tag: Tag;
  readonly unit: string;
  readonly figures: readonly PublishedFigure[];
}

/** Half of the last of so many decimals, and room for the figure's own binary rounding. */
export function halfDigit(decimals: number): number {
  return 10 ** -decimals / 2 + 1e-9;
}
