import { type DirectionWord, directionWord } from './direction-word';
import { formatNumber } from './format-number';
import { LENGTH_UNITS, lengthInUnit } from './length-unit';
import type { LengthUnit } from './unit-names';

/** A sideways figure taken apart, so that each part can be drawn its own way. */
export interface LateralFigure {
  /** Without sign. */
  readonly figure: string;
  readonly symbol: string;
  /** `none` also when the figure shown is zero. */
  readonly direction: DirectionWord;
}

/** A sideways length, right +, as a figure, a unit and a word. */
export function lateralFigure(offsetM: number, unit: LengthUnit): LateralFigure {
  const facts = LENGTH_UNITS[unit];
  const figure = formatNumber(Math.abs(lengthInUnit(offsetM, unit)), facts);
  const direction = Number(figure) === 0 ? 'none' : directionWord(offsetM);
  return { figure, symbol: facts.symbol, direction };
}
