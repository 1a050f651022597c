import type { FitReport } from '../../engine/fit/fit-report';
import type { TrialShot } from '../../engine/fit/trials/trials';
import type { TrialStep } from '../../state/measure/trial-steps';
import type { Preferences } from '../../store/records';
import type { RunTable } from '../../units/run-in-diamonds';
import { type EntryName, entryDraft } from './entry-specs';
import type { EntryUnit } from './keypad-draft';
import { lessonOf } from './lesson-of';
import { type ReadingFigure, readingFigure } from './reading-words';

/** What all readings so far lead to expect at a step, SI; null where they say nothing, or nothing is read. */
export function expectedOf(
  report: FitReport | null,
  shot: TrialShot,
  { name, kind }: TrialStep,
): number | null {
  if (kind !== 'read' || name === 'distance' || name === 'place' || name === 'play') return null;
  if (name === 'butt') return null;
  return lessonOf(report, shot)?.expected[name] ?? null;
}

/** Fewer diamonds than this are too small a share of one to be pictured. */
const LEAST_DIAMONDS = 0.25;

/** What is expected, in the unit in which it would be entered; a short length in none of the long ones. */
export function expectedFigure(
  name: EntryName,
  value: number,
  unit: EntryUnit,
  preferences: Preferences,
  table: RunTable,
): ReadingFigure {
  const { figure, word } = entryDraft(name, value, unit, table);
  return unit === 'diamonds' && Number(figure) < LEAST_DIAMONDS
    ? readingFigure(name, value, preferences)
    : { figure: `${figure} ${unit}`, way: word };
}
