import type { Shot } from '../../engine/direct/shot';
import { directionWord } from '../../units/direction-word';
import { formatNumber, formatQuantity } from '../../units/format-number';
import { sideName } from '../../units/side-name';
import { clockHour, type tipScale } from '../../units/tip-unit';
import type { TipUnit } from '../../units/unit-names';
import { arrowed, type TileWords } from './tile-text';

type TipScale = ReturnType<typeof tipScale>;
type Contact = Pick<Shot, 'side' | 'height'>;

/** What the tip's tile says: "⅜", "tip ← left", "outside"; or by the clock "9", "o’clock", "⅜ tip out". */
export function tipWords(
  shot: Contact & Pick<Shot, 'cutRad'>,
  unit: TipUnit,
  scale: TipScale,
): TileWords {
  const { side, height, cutRad } = shot;
  const [across, up] = [told(side, scale), told(height, scale)];
  if (across === null && up === null) return { figure: 'Centre', symbol: '', word: 'no side' };
  if (unit === 'clock') return clockWords(shot, scale);
  if (across === null) return { figure: up ?? '', symbol: sized(up, scale), word: upWord(height) };
  const spin = sideName(side, cutRad);
  const name = spin === 'inside' || spin === 'outside' ? spin : '';
  const also = up === null ? name : `${up} ${upWord(height)}`;
  return {
    figure: across,
    symbol: `${sized(across, scale)} ${arrowed(directionWord(side), '')}`,
    word: also,
  };
}

function clockWords({ side, height }: Contact, scale: TipScale): TileWords {
  const hour = clockHour(side, height) ?? '';
  const out = told(Math.hypot(side, height), scale);
  const symbol = hour.includes(':') ? '' : 'o’clock';
  return { figure: hour, symbol, word: `${out} ${sized(out, scale)} out` };
}

/** The same as words to be heard: "⅜ tip left, ½ tip low", or "at the centre". */
export function tipInWords(contact: Contact, unit: TipUnit, scale: TipScale): string {
  const { side, height } = contact;
  const sizes = [told(side, scale), told(height, scale)];
  if (sizes.every((size) => size === null)) return 'at the centre';
  if (unit === 'clock') {
    const { figure, word } = clockWords(contact, scale);
    return `${figure} o’clock, ${word}`;
  }
  const names = [side > 0 ? 'right' : 'left', height > 0 ? 'high' : 'low'];
  return sizes
    .flatMap((size, i) => (size === null ? [] : [`${size} ${sized(size, scale)} ${names[i]}`]))
    .join(', ');
}

/** How far out the miscue limit is: "1½ tips". */
export function limitInWords(limit: number, { facts, perRadius }: TipScale): string {
  return formatQuantity(inEighths(limit * perRadius), facts);
}

/** How far off the middle, to the eighth that a hand can tell; null where that is nothing. */
function told(fraction: number, { facts, perRadius }: TipScale): string | null {
  const size = Math.abs(fraction) * perRadius;
  const text = formatNumber(perRadius === 1 ? size : inEighths(size), facts);
  return /[1-9⅛¼⅜½⅝¾⅞]/.test(text) ? text : null;
}

/** What is off the middle at all is told, if by the least there is to tell. */
function inEighths(size: number): number {
  const eighths = Math.round(size * 8);
  return (size > 1e-9 ? Math.max(1, eighths) : eighths) / 8;
}

function sized(size: string | null, { facts }: TipScale): string {
  const isOne = size === null || /^(1|[⅛¼⅜½⅝¾⅞])$/.test(size);
  return isOne ? (facts.symbolOfOne ?? facts.symbol) : facts.symbol;
}

function upWord(height: number): string {
  return height > 0 ? '↑ high' : '↓ low';
}
