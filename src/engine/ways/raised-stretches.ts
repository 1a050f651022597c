import { BASE_STROKES, RAISED_STROKES } from './base-strokes';
import type { StretchFound } from './stretch-found';
import { strokeStretches, type WaysStretch } from './stretches';
import type { WaysQuestion } from './ways-question';
import { kindsWithout } from './why-none';

/**
 * The parts of the search that look with a raised cue: for the kinds of which none goes with a cue as
 * level as the balls let it be. Direct cuts are left out: over one ball and one pocket their own grid raises
 * the cue too.
 *
 * @param parts all parts looked at with a level cue
 */
export function raisedStretches(
  question: WaysQuestion,
  parts: readonly StretchFound[],
): readonly WaysStretch[] {
  const kinds = kindsWithout(question, parts);
  return RAISED_STROKES.flatMap((_, at) =>
    strokeStretches(question, kinds, BASE_STROKES.length + at),
  );
}
