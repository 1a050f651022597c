import type { FitReport } from '../../engine/fit/fit-report';
import type { TrialShot } from '../../engine/fit/trials/trials';
import type { TrialStep } from '../../state/measure/trial-steps';
import { lessonOf } from './lesson-of';

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
