import type { Advice, StrayName } from '../../engine/fit/advice';
import { quantityName } from './trial-words';

const STRAY_WORDS: Readonly<Record<StrayName, readonly [string, string]>> = {
  direction: ['how straight you aim', 'Play the same shots again, left and right alike.'],
  side: ['where the tip strikes sideways', 'Play with side left and right alike.'],
  height: ['how high the tip strikes', 'Mark the tip with chalk and look where it struck.'],
  elevation: ['how high the butt is', 'Raise the cue more, and measure the butt’s height.'],
  speed: ['how hard you play', 'Time the ball, or play the Speed trial.'],
};

/** What the readings cannot tell apart, and what would help. */
export function adviceWords(advice: Advice): string {
  if (advice.kind === 'pull-together') {
    const [one, two] = [advice.one, advice.two].map(({ quantity }) => quantityName(quantity));
    return `${capital(one ?? '')} and ${two ?? ''} pull together: the shot under Next tells them apart best.`;
  }
  const [stray, remedy] = STRAY_WORDS[advice.stray];
  return `${capital(quantityName(advice.quantity.quantity))} hangs on ${stray}. ${remedy}`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
