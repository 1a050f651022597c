import type { SureFigure, SureName, Sureness } from '../../state/measure/sureness';
import { plusMinus } from '../../units/plus-minus';

/** What each figure is, and its unit. */
const NAMES: Readonly<Record<SureName, readonly [string, string]>> = {
  squirt: ['Squirt at half a radius of side', '°'],
  slide: ['Slide friction', ''],
  roll: ['Roll friction', ''],
  throw: ['Friction of the balls', ''],
  bounce: ['Bounce of the balls', ''],
  'tilt-along': ['Falls away from the break end', ' mm a metre'],
  'tilt-right': ['Falls to the right', ' mm a metre'],
};

export function sureLabel(name: SureName): string {
  return NAMES[name][0];
}

/** "1.6 ± 0.2°". */
export function sureFigure(name: SureName, { value, sd }: SureFigure): string {
  return `${plusMinus(value, sd)}${NAMES[name][1]}`;
}

/** "2.5 ± 0.7° was assumed, 1.6 ± 0.2° measured." Or, after one shot, what it was before that. */
export function surenessInWords(
  { name, before, now, isMeasured }: Sureness,
  since: 'assumed' | 'earlier' = 'assumed',
): string {
  const earlier = sureFigure(name, before);
  if (!isMeasured) return `${earlier} is assumed.`;
  const present = sureFigure(name, now);
  return since === 'assumed'
    ? `${earlier} was assumed, ${present} measured.`
    : `${earlier} before, ${present} now.`;
}
