export type DirectionWord = 'left' | 'right' | 'none';

/** The word for a signed figure: right is plus, and nothing is neither. */
export function directionWord(signed: number): DirectionWord {
  if (signed > 0) return 'right';
  return signed < 0 ? 'left' : 'none';
}
