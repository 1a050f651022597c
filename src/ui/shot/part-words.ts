import type { ShooterPart } from '../../diagram/shooter-parts';

/** What each part of the drawing from behind the cue is, in one sentence. */
export const PART_WORDS: Readonly<Record<ShooterPart, string>> = {
  'object-ball': 'Object ball, as you see it over the cue ball.',
  'ghost-ball': 'Ghost ball: where the cue ball is as it hits. Drag it across to change the cut.',
  aim: 'Aim line: through the cue ball’s centre, the way the cue points.',
  cue: 'Cue: it lies on this line, as far beside the aim line as the tip is off centre.',
  band: 'Band with edges: every aim in it still goes.',
  haze: 'Soft haze: how sure this aim is. Two times in three the right one is in it.',
  'cue-ball': 'Cue ball, in front of you and in line with the ghost ball.',
  tip: 'Tip: where it touches the cue ball. Drag it for side and height.',
  limit: 'Dashed ring: outside it the tip slips off the ball.',
  held: 'Thin lines: aim and cue of the shot you hold.',
};
