import type { RailPoint } from '../../../diagram/rail-point';
import { formatNumber } from '../../../units/format-number';
import { pocketWords } from '../table-words';

const EIGHTHS = { decimals: 0, leastDecimals: 0, eighths: true } as const;
/** Diamonds from a corner to the pocket in the middle of a long rail. */
const MIDDLE = 4;

/** To the eighth: "2⅜ diamonds"; so near a corner that it is none, "". */
export function diamondsWords({ diamonds }: Pick<RailPoint, 'diamonds'>): string {
  const eighths = Math.round(diamonds * 8) / 8;
  if (eighths === 0) return '';
  return `${formatNumber(eighths, EIGHTHS)} ${eighths <= 1 ? 'diamond' : 'diamonds'}`;
}

/** "the left rail’s nose, 2⅜ diamonds from the far left corner". */
export function railPointWords(point: RailPoint): string {
  const { rail, corner, diamonds } = point;
  const words = diamondsWords(point);
  if (words === '') return `the ${pocketWords(corner)} corner`;
  const isLong = rail === 'left' || rail === 'right';
  if (isLong && Math.round(diamonds * 8) === 8 * MIDDLE) return `the middle ${rail} pocket`;
  return `the ${rail} rail’s nose, ${words} from the ${pocketWords(corner)} corner`;
}
