import type { SureFigure, SureName, Sureness } from '../../state/measure/sureness';
import { plusMinus } from '../../units/plus-minus';
import { SLOPE_UNITS } from '../../units/slope-unit';
import type { LengthUnit } from '../../units/unit-names';

const LABELS: Readonly<Record<SureName, string>> = {
  squirt: 'Squirt at half a radius of side',
  slide: 'Slide friction',
  roll: 'Roll friction',
  throw: 'Friction of the balls',
  bounce: 'Bounce of the balls',
  'tilt-along': 'Falls away from the break end',
  'tilt-right': 'Falls to the right',
};

export function sureLabel(name: SureName): string {
  return LABELS[name];
}

/** "1.6 ± 0.2°". */
export function sureFigure(name: SureName, { value, sd }: SureFigure, unit: LengthUnit): string {
  if (name === 'squirt') return `${plusMinus(value, sd)}°`;
  if (name !== 'tilt-along' && name !== 'tilt-right') return plusMinus(value, sd);
  const { facts, perSi } = SLOPE_UNITS[unit];
  return `${plusMinus(value * perSi, sd * perSi)} ${facts.symbol}`;
}

/** "2.5 ± 0.7° was assumed, 1.6 ± 0.2° measured." Or, after one shot, what it was before that. */
export function surenessInWords(
  { name, before, now, isMeasured }: Sureness,
  unit: LengthUnit,
  since: 'assumed' | 'earlier' = 'assumed',
): string {
  const earlier = sureFigure(name, before, unit);
  if (!isMeasured) return `${earlier} is assumed.`;
  const present = sureFigure(name, now, unit);
  return since === 'assumed'
    ? `${earlier} was assumed, ${present} measured.`
    : `${earlier} before, ${present} now.`;
}
