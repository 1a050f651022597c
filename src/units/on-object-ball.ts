import { type DirectionWord, directionWord } from './direction-word';
import { formatNumber } from './format-number';

/** A sideways figure told on the face of the object ball. */
export interface OnObjectBall {
  /** Such as "a quarter ball left of centre", to the nearest eighth of a ball. */
  readonly words: string;
  /** Exactly, in ball widths from the object ball's centre, right +. The edge is at half. */
  readonly ballWidths: number;
  /** The side the words name. */
  readonly side: DirectionWord;
  readonly place: 'centre' | 'on-ball' | 'edge' | 'outside';
}

const EDGE_EIGHTHS = 4;
/** Three balls: further out, a decimal says as much as eighths. */
const MOST_IN_EIGHTHS = 24;
const BALLS = { decimals: 1, leastDecimals: 0, eighths: true } as const;

const FRACTION_WORDS = [
  '',
  'an eighth of a ball',
  'a quarter ball',
  'three eighths of a ball',
  'half a ball',
  'five eighths of a ball',
  'three quarters of a ball',
  'seven eighths of a ball',
] as const;
/**
 * Tells a sideways figure by the object ball's centre and edges.
 * @param offsetM from the object ball's centre, square to the straight line through it, right +.
 */
export function describeOnObjectBall(offsetM: number, ballRadiusM: number): OnObjectBall {
  const ballWidths = offsetM / (2 * ballRadiusM);
  const eighths = Math.round(Math.abs(ballWidths) * 8);
  if (eighths === 0) {
    return { words: 'through the centre', ballWidths, side: 'none', place: 'centre' };
  }
  const side = directionWord(ballWidths);
  if (eighths < EDGE_EIGHTHS) {
    const words = `${FRACTION_WORDS[eighths] ?? ''} ${side} of centre`;
    return { words, ballWidths, side, place: 'on-ball' };
  }
  if (eighths === EDGE_EIGHTHS) {
    return { words: `at the ${side} edge`, ballWidths, side, place: 'edge' };
  }
  const words = `${ballsInWords(eighths - EDGE_EIGHTHS)} outside the ${side} edge`;
  return { words, ballWidths, side, place: 'outside' };
}

function ballsInWords(eighths: number): string {
  if (eighths < 8) return FRACTION_WORDS[eighths] ?? '';
  if (eighths === 8) return 'a whole ball';
  if (eighths > MOST_IN_EIGHTHS) return `${(eighths / 8).toFixed(1)} balls`;
  return `${formatNumber(eighths / 8, BALLS)} balls`;
}
