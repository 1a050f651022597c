/** What a tile says: "1.15", "m", "to the ghost ball". */
export interface TileWords {
  readonly figure: string;
  readonly symbol: string;
  readonly word: string;
}

/** A side as arrow and word; `neither` where there is none. */
export function arrowed(side: 'left' | 'right' | 'none', neither: string): string {
  if (side === 'none') return neither;
  return side === 'left' ? '← left' : '→ right';
}
