import type { FitReport } from '../../engine/fit/fit-report';
import type { Lesson } from '../../engine/fit/next-shot';
import type { TrialShot } from '../../engine/fit/trials/trials';
import { quantityName } from './trial-words';

/** What the report says of a shot not yet played; null where it says nothing. */
export function lessonOf(report: FitReport | null, shot: TrialShot): Lesson | null {
  return report?.lessons.find((lesson) => isAlike(lesson.shot, shot)) ?? null;
}

/** What the shot that teaches most is for, as the end of a sentence; null where none is known. */
export function firstForWords(report: FitReport | null): string | null {
  const [best] = report?.lessons ?? [];
  return best === undefined ? null : quantityName(best.teaches);
}

/** Two shots of one trial set up and meant alike, whatever a word is taken to mean. */
function isAlike(one: TrialShot, two: TrialShot): boolean {
  return one.trial === two.trial && bare(one) === bare(two);
}

function bare({ stroke, setup }: TrialShot): string {
  const { headingRad, side, height, elevationRad, speedWord } = stroke;
  const { gapM, cutRad } = setup;
  return [headingRad, side, height, elevationRad, speedWord, gapM, cutRad].join();
}
