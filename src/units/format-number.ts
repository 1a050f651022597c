import type { UnitFacts } from './unit-facts';

const EIGHTHS = ['', '⅛', '¼', '⅜', '½', '⅝', '¾', '⅞'] as const;

/** Far below anything shown; only undoes what conversion to metres and back leaves. Absolute. */
const EIGHTH_TOLERANCE = 1e-9;

/** What decides how the figure itself is written. */
type FigureFacts = Pick<UnitFacts, 'decimals' | 'leastDecimals' | 'eighths'>;

/** A number as this unit is written, without its symbol. A true minus sign, never "−0". */
export function formatNumber(value: number, facts: FigureFacts): string {
  const size =
    (facts.eighths ? asEighths(Math.abs(value)) : null) ?? asDecimals(Math.abs(value), facts);
  return value < 0 && /[1-9½¼¾⅛⅜⅝⅞]/.test(size) ? `−${size}` : size;
}

/** A number with its symbol: "1.15 m", "24°", "1 diamond". */
export function formatQuantity(value: number, facts: UnitFacts): string {
  const figure = formatNumber(value, facts);
  return `${figure}${facts.spaced ? ' ' : ''}${symbolFor(figure, facts)}`;
}

/** The symbol that goes with a figure as {@link formatNumber} writes it. */
export function symbolFor(figure: string, facts: UnitFacts): string {
  const one = /^−?(1|[⅛¼⅜½⅝¾⅞])$/.test(figure);
  return one ? (facts.symbolOfOne ?? facts.symbol) : facts.symbol;
}

function asEighths(size: number): string | null {
  const eighths = Math.round(size * 8);
  if (Math.abs(size * 8 - eighths) > EIGHTH_TOLERANCE || eighths % 8 === 0) return null;
  const whole = Math.floor(eighths / 8);
  return `${whole === 0 ? '' : whole}${EIGHTHS[eighths % 8] ?? ''}`;
}

function asDecimals(size: number, facts: FigureFacts): string {
  const [whole = '', decimals = ''] = size.toFixed(facts.decimals).split('.');
  const kept =
    decimals.slice(0, facts.leastDecimals) + decimals.slice(facts.leastDecimals).replace(/0+$/, '');
  return kept === '' ? whole : `${whole}.${kept}`;
}
