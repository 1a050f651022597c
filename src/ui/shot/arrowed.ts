/** A side as arrow and word; `neither` where there is none. */
export function arrowed(side: 'left' | 'right' | 'none', neither: string): string {
  if (side === 'none') return neither;
  return side === 'left' ? '← left' : '→ right';
}
