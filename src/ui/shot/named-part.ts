import type { Point } from '../../diagram/canvas';
import { partsAt, partsOf, type ShooterPart } from '../../diagram/shooter-parts';
import type { ShooterView } from '../../diagram/shooter-view';

/** What each part of the drawing from behind the cue is, in one sentence that fits one line. */
export const PART_WORDS: Readonly<Record<ShooterPart, string>> = {
  'object-ball': 'Object ball, as seen over the cue ball.',
  'ghost-ball': 'Ghost ball: cue ball at contact. Drag for the cut.',
  aim: 'Aim line: the way the cue points.',
  cue: 'Cue: parallel to the aim line, drawn more aslant.',
  band: 'Goes: aims between these edges still pot.',
  haze: 'How sure: the right aim is in here 2 times in 3.',
  'cue-ball': 'Cue ball, in line with the ghost ball.',
  tip: 'Tip: drag it over the ball for side and height.',
  limit: 'Dashed ring: outside it the tip slips off.',
  held: 'Thin lines: aim and cue of the held shot.',
};

/** What lies under a finger, px: the next of it where one was named before. */
export function partUnder(
  view: ShooterView,
  at: Point,
  before: ShooterPart | null,
): ShooterPart | null {
  return after(before, partsAt(view, at));
}

/** The next of all that is drawn; null after the last. */
export function nextPart(view: ShooterView, before: ShooterPart | null): ShooterPart | null {
  return after(before, partsOf(view));
}

/** The part after the one named before, so that taps on one place go through all that lies there. */
function after(before: ShooterPart | null, parts: readonly ShooterPart[]): ShooterPart | null {
  const at = before === null ? -1 : parts.indexOf(before);
  return parts[at + 1] ?? null;
}
