import { type Era, hasChanged } from '../../state/measure/era-figures';
import type { ShelfName } from '../../store/records';
import { dayWords } from '../../units/ago-words';
import type { LengthUnit } from '../../units/unit-names';
import { sureFigure, sureLabel } from './sureness-words';

/** What may have been done to each, and parts what was read before from what is read after. */
export const CHANGES: Readonly<Record<ShelfName, string>> = {
  cues: 'new tip',
  cloths: 'new cloth',
  balls: 'balls washed',
  tables: 'table levelled',
};

/** "Since new tip, 3 Mar: squirt 1.6 ± 0.2°, unchanged within the error." */
export function eraWords(era: Era, before: Era | null, nowMs: number, unit: LengthUnit): string {
  const when = era.since
    ? `Since ${era.since.what}, ${dayWords(era.since.atMs, nowMs)}`
    : 'Before any change';
  if (era.figures.length === 0) return `${when}: nothing measured.`;
  const figures = era.figures.map(({ quantity, figure }) => {
    const words = `${sureLabel(quantity).toLowerCase()} ${sureFigure(quantity, figure, unit)}`;
    const former = before?.figures.find((one) => one.quantity === quantity);
    if (!former) return words;
    return hasChanged(figure, former.figure)
      ? `${words}, changed`
      : `${words}, unchanged within the error`;
  });
  return `${when}: ${figures.join('; ')}.`;
}
