import type { KitQuantity } from '../../engine/kit/kit-spread';
import type { SureFigure, Sureness } from '../../state/measure/sureness';
import { plusMinus } from '../../units/plus-minus';
import { SLOPE_UNITS } from '../../units/slope-unit';
import type { LengthUnit } from '../../units/unit-names';
import { QUANTITY_WORDS } from '../../words/kit-words';

export function sureLabel(quantity: KitQuantity): string {
  return QUANTITY_WORDS[quantity].pictured?.label ?? QUANTITY_WORDS[quantity].name;
}

/** "1.6 ± 0.2°". */
export function sureFigure(
  quantity: KitQuantity,
  { value, sd }: SureFigure,
  lengthUnit: LengthUnit,
): string {
  const unit = QUANTITY_WORDS[quantity].pictured?.unit ?? '';
  if (unit !== 'slope') return `${plusMinus(value, sd)}${unit}`;
  const { facts, perSi } = SLOPE_UNITS[lengthUnit];
  return `${plusMinus(value * perSi, sd * perSi)} ${facts.symbol}`;
}

/** "2.5 ± 0.7° was assumed, 1.6 ± 0.2° measured." Or, after one shot, what it was before that. */
export function surenessInWords(
  { quantity, before, now, isMeasured }: Sureness,
  unit: LengthUnit,
  since: 'assumed' | 'earlier' = 'assumed',
): string {
  const earlier = sureFigure(quantity, before, unit);
  if (!isMeasured) return `${earlier} is assumed.`;
  const present = sureFigure(quantity, now, unit);
  return since === 'assumed'
    ? `${earlier} was assumed, ${present} measured.`
    : `${earlier} before, ${present} now.`;
}
