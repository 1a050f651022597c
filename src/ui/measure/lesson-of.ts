import type { FitReport } from '../../engine/fit/fit-report';
import type { Lesson } from '../../engine/fit/next-shot';
import type { TrialShot } from '../../engine/fit/trials/trials';

/** What the report says of a shot not yet played; null where it says nothing. */
export function lessonOf(report: FitReport | null, shot: TrialShot): Lesson | null {
  return report?.lessons.find((lesson) => isAlike(lesson.shot, shot)) ?? null;
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
