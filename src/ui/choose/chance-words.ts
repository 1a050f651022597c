import type { ChanceCell, ChanceGrid } from '../../diagram/table-chances';
import { bestCell } from '../../diagram/table-chances';
import { formatNumber, formatQuantity } from '../../units/format-number';
import type { SpeedScale } from '../../units/speed-unit';
import { TIP_CONTACT } from '../../units/tip-contact';
import { percentWords } from './table-words';

/** One decimal is enough on an axis and in a list. */
export function shortSpeed(speedMps: number, scale: SpeedScale): string {
  return formatQuantity(scale.inUnit(speedMps), {
    ...scale.facts,
    decimals: 1,
    leastDecimals: 1,
  });
}

/** A cell in words: "0.2 R → right, 1.6 m/s: goes 41 %". */
export function cellWords(
  { column, row, best }: ChanceCell,
  { sides, speedsMps }: ChanceGrid,
  scale: SpeedScale,
): string {
  const side = best?.shot.side ?? sides[column] ?? 0;
  const speed = shortSpeed(best?.shot.speedMps ?? speedsMps[row] ?? 0, scale);
  const goes = best ? `goes ${percentWords(best.chance.share)}` : 'does not go';
  return `${sideWords(side)}, ${speed}: ${goes}`;
}

function sideWords(side: number): string {
  const size = formatNumber(Math.abs(side), { ...TIP_CONTACT, eighths: false });
  if (size === '0') return 'no side';
  return `${size} R ${side > 0 ? '→ right' : '← left'}`;
}

/** What the whole map says: how often the best of each speed goes, and with what side. */
export function mapWords(grid: ChanceGrid, scale: SpeedScale): string {
  const rows = grid.rows.map((row) => bestCell({ ...grid, rows: [row] }));
  const told = rows.flatMap((cell) => (cell ? [cellWords(cell, grid, scale)] : []));
  const list = told.length === 0 ? 'nothing goes' : told.join('; ');
  return `Chance over side and speed. The best at each speed: ${list}`;
}
