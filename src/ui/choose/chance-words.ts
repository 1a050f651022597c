import type { ChanceCell, ChanceGrid } from '../../diagram/table-chances';
import { bestCell } from '../../diagram/table-chances';
import type { RankedWay } from '../../engine/plan/ranked-way';
import type { ChanceRange } from '../../engine/player/some-players';
import type { Difference } from '../../state/choose/for-most';
import { ordinal } from '../../units/diamond-count';
import { formatQuantity } from '../../units/format-number';
import type { SpeedScale } from '../../units/speed-unit';
import type { Telling } from '../chance-telling';
import { rangeOfTen } from '../shot/room-words';
import type { TipTold } from '../shot/tip-told';
import { tipInWords } from '../shot/tip-words';
import { tenthsWords } from './pocket-words';

/** One decimal is enough on an axis and in a list. */
export function shortSpeed(speedMps: number, scale: SpeedScale): string {
  return formatQuantity(scale.inUnit(speedMps), {
    ...scale.facts,
    decimals: 1,
    leastDecimals: 1,
  });
}

/** A way that goes this much less of all strokes is not called harder, and neither by this much of the best's. */
const AS_EASY = 0.03;
const AS_EASY_SHARE = 0.1;
/** From this much of the best's on it is called much harder (our judgement). */
const MUCH_HARDER_SHARE = 0.3;

/** How easy a way is beside the easiest, where no figure is told: "about as easy". */
export function easeBeside(share: number, easiest: number): string {
  const less = easiest - share;
  if (less <= 0) return 'easiest';
  if (less < Math.max(AS_EASY, AS_EASY_SHARE * easiest)) return 'about as easy';
  return less < MUCH_HARDER_SHARE * easiest ? 'harder' : 'much harder';
}

/** How far a chance may be off: "For you 3 to 5 in 10, as far as is known."; empty where it hardly is. */
export function rangeLine(range: ChanceRange, whom: string): string {
  const ends = rangeOfTen(range);
  return ends ? `For ${whom} ${ends.join(' to ')} in 10, as far as is known.` : '';
}

/**
 * Where the first ways differ for somebody: "For you the softer one (second) goes 9 in 100 more than the
 * first; for most 2 more." Where there is a zone, a way that goes has to stop in it too.
 *
 * @param ways as they are listed
 */
export function differenceLine(
  { better, other, forPlayer, forMost }: Difference,
  ways: readonly RankedWay[],
  whom: string,
): string {
  const place = ({ option: { place } }: RankedWay) =>
    ordinal(1 + ways.findIndex(({ option }) => option.place === place));
  const does =
    better.goodPosition === null ? goesWords(better, other) : 'goes and stops in the zone';
  const more = Math.round(forPlayer * 100);
  const most = Math.round(forMost * 100);
  const forAll =
    most === 0 ? 'for most no more' : `for most ${Math.abs(most)} ${most > 0 ? 'more' : 'fewer'}`;
  const which = `${apartWords(better, other)} (${place(better)})`;
  return `For ${whom} ${which} ${does} ${more} in 100 more than the ${place(other)}; ${forAll}.`;
}

/** Scratches are named where they count. */
function goesWords(...ways: readonly RankedWay[]): string {
  return ways.some(({ clean }) => clean < 1) ? 'goes without a scratch' : 'goes';
}

/** What sets the one of two ways apart from the other. */
function apartWords({ option: { stroke: one } }: RankedWay, { option }: RankedWay): string {
  const { stroke: two } = option;
  const faster = one.speedMps / two.speedMps;
  if (faster < 1 / TELLS_APART) return 'the softer one';
  if (faster > TELLS_APART) return 'the firmer one';
  const side = Math.abs(one.side) - Math.abs(two.side);
  if (Math.abs(side) > 0.05) return side > 0 ? 'the one with more side' : 'the one with less side';
  if (one.elevationRad !== two.elevationRad) {
    return one.elevationRad < two.elevationRad
      ? 'the more level one'
      : 'the one with the cue raised';
  }
  return one.height > two.height ? 'the one struck higher' : 'the one struck lower';
}

/** Speeds this many times apart are two to a player. */
const TELLS_APART = 1.15;

/** A cell in words, by straight lines: "⅜ tip right, 1.6 m/s: goes about 4 in 10". */
export function cellWords(
  { column, row, best }: ChanceCell,
  { sides, speedsMps }: ChanceGrid,
  scale: SpeedScale,
  telling: Telling,
  tip: TipTold,
): string {
  const speed = shortSpeed(speedsMps[row] ?? 0, scale);
  const about = telling === 'figures' ? 'goes about ' : '';
  const goes = best ? `${about}${tenthsWords(best.chance.share, telling)}` : 'does not go';
  return `${sideWords(sides[column] ?? 0, tip)}, ${speed}: ${goes}`;
}

/** "⅜ tip right"; none is "no side". */
function sideWords(side: number, { unit, scale }: TipTold): string {
  return side === 0 ? 'no side' : tipInWords({ side, height: 0 }, unit, scale);
}

/** What the whole map says: how often the best of each speed goes, and with what side. */
export function mapWords(
  grid: ChanceGrid,
  scale: SpeedScale,
  telling: Telling,
  tip: TipTold,
): string {
  const rows = grid.rows.map((row) => bestCell({ ...grid, rows: [row] }));
  const told = rows.flatMap((cell) => (cell ? [cellWords(cell, grid, scale, telling, tip)] : []));
  const list = told.length === 0 ? 'nothing goes' : told.join('; ');
  const what = telling === 'figures' ? 'Chance' : 'How easy it is for most';
  return `${what} over side and speed. The best at each speed: ${list}`;
}
