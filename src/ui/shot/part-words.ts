import type { ShooterPart } from '../../diagram/shooter-parts';

/** What each part of the drawing from behind the cue is, in one sentence that fits one line. */
export const PART_WORDS: Readonly<Record<ShooterPart, string>> = {
  'object-ball': 'Object ball, as seen over the cue ball.',
  'ghost-ball': 'Ghost ball: cue ball at contact. Drag for the cut.',
  aim: 'Aim line: the way the cue points.',
  cue: 'Cue: lies beside the aim line, parallel to it.',
  band: 'Goes: aims between these edges still pot.',
  haze: 'How sure: the right aim is in here 2 times in 3.',
  'cue-ball': 'Cue ball, in line with the ghost ball.',
  tip: 'Tip: drag it over the ball for side and height.',
  limit: 'Dashed ring: outside it the tip slips off.',
  held: 'Thin lines: aim and cue of the held shot.',
};
