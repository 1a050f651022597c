import type { ShooterPart } from '../../diagram/shooter-parts';

/** What each part of the drawing from behind the cue is, in one sentence that fits one line. */
export const PART_WORDS: Readonly<Record<ShooterPart, string>> = {
  'object-ball': 'Object ball, as seen over the cue ball.',
  'ghost-ball': 'Ghost ball: cue ball at contact. Drag for the cut.',
  aim: 'Aim line: the way the cue points.',
  cue: 'Cue: it lies on this line, its tip off centre.',
  band: 'Band with edges: aims in it still go.',
  haze: 'Haze: the right aim is in it 2 times in 3.',
  'cue-ball': 'Cue ball, in line with the ghost ball.',
  tip: 'Tip: drag it over the ball for side and height.',
  limit: 'Dashed ring: outside it the tip slips off.',
  held: 'Thin lines: aim and cue of the held shot.',
};
