import { formatNumber } from './format-number';

/** Decimals beyond which nothing measured here goes. */
const MOST_DECIMALS = 4;

/**
 * A figure and its standard deviation, both to the decimals that the deviation deserves: one
 * leading digit of it, two where that digit is a 1. A true minus sign, never "−0".
 */
export function plusMinus(value: number, sd: number): string {
  const decimals = decimalsFor(sd);
  return `${signed(value, decimals)} ± ${sd.toFixed(decimals)}`;
}

/**
 * A deviation as a unit writes it, without the symbol: "±5"; "under ±1" where it would round to nothing.
 * @param sd in that unit, of either sign
 */
export function spreadFigure(sd: number, facts: Parameters<typeof formatNumber>[1]): string {
  const figure = formatNumber(Math.abs(sd), facts);
  return Number(figure) === 0
    ? `under ±${formatNumber(10 ** -facts.decimals, facts)}`
    : `±${figure}`;
}

/** How many decimals a figure with that standard deviation is told to. */
function decimalsFor(sd: number): number {
  if (!(sd > 0)) return MOST_DECIMALS;
  const place = Math.floor(Math.log10(sd));
  const leading = sd / 10 ** place;
  const wanted = leading < 1.95 ? 1 - place : -place;
  return Math.min(MOST_DECIMALS, Math.max(0, wanted));
}

function signed(value: number, decimals: number): string {
  const size = Math.abs(value).toFixed(decimals);
  return value < 0 && /[1-9]/.test(size) ? `−${size}` : size;
}
