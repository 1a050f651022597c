import { formatNumber, formatQuantity } from './format-number';
import { parseNumber } from './parse-number';
import type { Parsed } from './parsed';
import type { SideWords, UnitFacts } from './unit-facts';

/** A figure with the word for its side: "½ left"; nothing has no side. */
export function figureWithSide(value: number, facts: UnitFacts): string {
  return withSide(formatNumber(Math.abs(value), facts), value, facts);
}

/** The same with its unit: "½ tip left". */
export function quantityWithSide(value: number, facts: UnitFacts): string {
  return withSide(formatQuantity(Math.abs(value), facts), value, facts);
}

function withSide(size: string, value: number, { sides }: UnitFacts): string {
  if (!sides) return value < 0 ? `−${size}` : size;
  return /[1-9½¼¾⅛⅜⅝⅞]/.test(size) ? `${size} ${value < 0 ? sides.minus : sides.plus}` : size;
}

/** A number as typed, with a sign or with the word for its side, or the beginning of that. */
export function parseWithSide(text: string, facts: UnitFacts): Parsed<number> {
  const { sides, symbol } = facts;
  const [, figure = '', word = ''] = /^(.*?)\s*([a-z]+)\s*$/.exec(text) ?? [];
  const sign = sides && signOf(word, sides);
  if (!sign) return parseNumber(withoutUnit(text, facts), symbol);
  const size = parseNumber(withoutUnit(figure, facts), symbol);
  return size.ok ? { ok: true, value: sign * Math.abs(size.value) } : size;
}

function signOf(word: string, { plus, minus }: SideWords): 1 | -1 | null {
  if (word === '') return null;
  if (minus.startsWith(word)) return -1;
  return plus.startsWith(word) ? 1 : null;
}

/** A unit of one, as in "½ tip", is taken off as well. */
function withoutUnit(text: string, { symbolOfOne }: UnitFacts): string {
  const bare = text.trim();
  return symbolOfOne && bare.endsWith(symbolOfOne) ? bare.slice(0, -symbolOfOne.length) : bare;
}
