import type { ReadingName } from '../../engine/fit/trials/trial';
import type { Preferences } from '../../store/records';
import { formatNumber } from '../../units/format-number';
import { LENGTH_UNITS, lengthInUnit } from '../../units/length-unit';
import { type EntryName, wayOf } from './entry-specs';
import type { EntryWord } from './keypad-draft';

/** A reading apart, so that its way can be drawn as arrow and word. */
export interface ReadingFigure {
  /** With its unit: "92 mm". */
  readonly figure: string;
  readonly way: EntryWord;
}

export const READING_LABELS: Readonly<Record<ReadingName, string>> = {
  landingM: 'touched',
  timeS: 'took',
  cueBallM: 'cue ball',
  objectBallM: 'other ball',
  objectLandingM: 'touched',
  bridgeM: 'bridge',
  runM: 'ran',
  upM: 'arrived',
};

const SECONDS = { decimals: 2, leastDecimals: 2, eighths: false } as const;
const METRES = { decimals: 2, leastDecimals: 2, eighths: false } as const;
/** From here on a length is told in m rather than cm or mm. */
const FROM_M = 1;

/** A reading as it is told in the lists. */
export function readingFigure(
  name: EntryName,
  value: number,
  { lengthUnit }: Pick<Preferences, 'lengthUnit'>,
): ReadingFigure {
  if (name === 'timeS') return { figure: `${formatNumber(value, SECONDS)} s`, way: '' };
  const way = wayOf(name, value);
  const size = Math.abs(value);
  if (size >= FROM_M && lengthUnit !== 'in') {
    return { figure: `${formatNumber(size, METRES)} m`, way };
  }
  const facts = { ...LENGTH_UNITS[lengthUnit], leastDecimals: 0 };
  const figure = formatNumber(lengthInUnit(size, lengthUnit), facts);
  return { figure: `${figure} ${facts.symbol}`, way: figure === '0' ? '' : way };
}

/** The same as one phrase. */
export function readingInWords(figure: ReadingFigure): string {
  return figure.way === '' ? figure.figure : `${figure.figure} ${figure.way}`;
}
