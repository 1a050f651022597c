import type { ChanceCell, ChanceGrid } from '../../diagram/table-chances';
import { bestCell } from '../../diagram/table-chances';
import { formatNumber, formatQuantity } from '../../units/format-number';
import type { SpeedScale } from '../../units/speed-unit';
import { TIP_CONTACT } from '../../units/tip-contact';
import { easeWords, type Telling } from '../chance-telling';
import { percentWords } from './table-words';

/** One decimal is enough on an axis and in a list. */
export function shortSpeed(speedMps: number, scale: SpeedScale): string {
  return formatQuantity(scale.inUnit(speedMps), {
    ...scale.facts,
    decimals: 1,
    leastDecimals: 1,
  });
}

/** How often something goes: "41 %"; where no figure is told, "fair". */
export function shareWords(share: number, telling: Telling): string {
  return telling === 'figures' ? percentWords(share) : easeWords(share);
}

/** A cell in words, by straight lines: "0.2 R → right, 1.6 m/s: goes about 41 %". */
export function cellWords(
  { column, row, best }: ChanceCell,
  { sides, speedsMps }: ChanceGrid,
  scale: SpeedScale,
  telling: Telling,
): string {
  const speed = shortSpeed(speedsMps[row] ?? 0, scale);
  const about = telling === 'figures' ? 'goes about ' : '';
  const goes = best ? `${about}${shareWords(best.chance.share, telling)}` : 'does not go';
  return `${sideWords(sides[column] ?? 0)}, ${speed}: ${goes}`;
}

/** "¼ R → right"; none is "no side". */
export function sideWords(side: number): string {
  return radiiWords(side, '→ right', '← left') ?? 'no side';
}

/** A tip contact off the middle; null where it is not. */
export function radiiWords(fraction: number, plus: string, minus: string): string | null {
  const size = formatNumber(Math.abs(fraction), TIP_CONTACT);
  return size === '0' ? null : `${size} R ${fraction > 0 ? plus : minus}`;
}

/** What the whole map says: how often the best of each speed goes, and with what side. */
export function mapWords(grid: ChanceGrid, scale: SpeedScale, telling: Telling): string {
  const rows = grid.rows.map((row) => bestCell({ ...grid, rows: [row] }));
  const told = rows.flatMap((cell) => (cell ? [cellWords(cell, grid, scale, telling)] : []));
  const list = told.length === 0 ? 'nothing goes' : told.join('; ');
  const what = telling === 'figures' ? 'Chance' : 'How easy it is for most';
  return `${what} over side and speed. The best at each speed: ${list}`;
}
