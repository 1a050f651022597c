import { formatNumber, symbolFor } from './format-number';
import type { Parsed } from './parsed';
import type { UnitFacts } from './unit-facts';

/**
 * Whether a figure lies within a range of the same unit; if not, a line that names the bound.
 * Bounds are rounded inwards when shown, so that typing the bound as read is always accepted.
 */
export function checkRange(
  value: number,
  range: { readonly min: number; readonly max: number },
  facts: UnitFacts,
): Parsed<number> {
  if (value >= range.min && value <= range.max) return { ok: true, value };
  if (facts.sides && !Number.isNaN(value)) {
    const most = shown(range.max, facts, Math.floor);
    return { ok: false, problem: 'too-large', message: `At most ${most} either way.` };
  }
  if (value < range.min) {
    const least = shown(range.min, facts, Math.ceil);
    return { ok: false, problem: 'too-small', message: `The least is ${least}.` };
  }
  if (value > range.max) {
    const most = shown(range.max, facts, Math.floor);
    return { ok: false, problem: 'too-large', message: `The most is ${most}.` };
  }
  return { ok: false, problem: 'not-a-number', message: 'Type a number.' };
}

function shown(bound: number, facts: UnitFacts, round: (x: number) => number): string {
  const scale = 10 ** facts.decimals;
  const near = Number((bound * scale).toPrecision(12));
  const figure = formatNumber(round(near) / scale, { ...facts, eighths: false });
  return `${figure}${facts.spaced ? ' ' : ''}${symbolFor(figure, facts)}`;
}
