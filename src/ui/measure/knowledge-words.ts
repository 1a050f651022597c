import type { Advice, StrayName } from '../../engine/fit/advice';
import type { KitQuantity } from '../../engine/kit/kit-spread';
import { type Era, hasChanged } from '../../state/measure/era-figures';
import type { SureFigure, Sureness } from '../../state/measure/sureness';
import type { ShelfName } from '../../store/records';
import { dayWords } from '../../units/ago-words';
import { plusMinus } from '../../units/plus-minus';
import { SLOPE_UNITS } from '../../units/slope-unit';
import type { LengthUnit } from '../../units/unit-names';
import { QUANTITY_WORDS } from '../../words/quantity-words';
import { quantityName } from './trial-words';

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

/** What may have been done to each, and parts what was read before from what is read after. */
export const CHANGES: Readonly<Record<ShelfName, string>> = {
  cues: 'new tip',
  cloths: 'new cloth',
  balls: 'balls washed',
  tables: 'table levelled',
};

/** "Since new tip, 3 Mar: squirt 1.6 ± 0.2°, unchanged within the error." */
export function eraWords(era: Era, before: Era | null, nowMs: number, unit: LengthUnit): string {
  const when = era.since
    ? `Since ${era.since.what}, ${dayWords(era.since.atMs, nowMs)}`
    : 'Before any change';
  if (era.figures.length === 0) return `${when}: nothing measured.`;
  const figures = era.figures.map(({ quantity, figure }) => {
    const words = `${sureLabel(quantity).toLowerCase()} ${sureFigure(quantity, figure, unit)}`;
    const former = before?.figures.find((one) => one.quantity === quantity);
    if (!former) return words;
    return hasChanged(figure, former.figure)
      ? `${words}, changed`
      : `${words}, unchanged within the error`;
  });
  return `${when}: ${figures.join('; ')}.`;
}

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

/** With its first letter as a sentence begins. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
