/** The room a drawing has, in CSS pixels, and the size of its text. */
export interface Canvas {
  readonly widthPx: number;
  readonly heightPx: number;
  /** Height of small text: it grows with the reader's own text size. */
  readonly textPx: number;
}

export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface Circle {
  readonly cx: number;
  readonly cy: number;
  readonly r: number;
}

/** A word in a drawing and the side of `x` on which it stands. */
export interface Label {
  readonly x: number;
  readonly y: number;
  readonly anchor: 'start' | 'middle' | 'end';
}

/** Rough width of small text of that many letters, for keeping words off one another. */
export function textWidthPx(letters: number, textPx: number): number {
  return letters * textPx * 0.56;
}
