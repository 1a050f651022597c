import type { Refusal, RefusalReason } from '../../engine/direct/shot';
import { refusalWords } from '../../words/refusal-words';

/** What would help where no other speed does, for refusals whose remedy speaks of speed. */
const BESIDE_SPEED: { readonly [R in RefusalReason]?: string } = {
  'stops-short': 'No speed gets it there: play from nearer, a fuller cut, or to a nearer pocket.',
  'curves-away': 'No speed alone does it: lower the cue, or use less side.',
  'flies-over': 'No speed alone does it: lower the cue.',
};

/** What would help: another speed only where one was found at which the ball goes. */
export function remedyWords(refusal: Refusal, speed: number | null): string {
  return (speed === null && BESIDE_SPEED[refusal.reason]) || refusalWords(refusal).remedy;
}
