import type { Parsed, ParseProblem } from './parsed';

const VULGAR_EIGHTHS: Readonly<Record<string, number>> = {
  '⅛': 1,
  '¼': 2,
  '⅜': 3,
  '½': 4,
  '⅝': 5,
  '¾': 6,
  '⅞': 7,
};
const VULGAR_THIRDS: Readonly<Record<string, number>> = { '⅓': 1, '⅔': 2 };

const DECIMAL = /^(?:\d+(?:[.,]\d*)?|[.,]\d+)$/;
const FRACTION = /^(?:(\d+)[ +])?(\d+)\/(\d+)$/;
const VULGAR = /^(\d*) ?([⅛¼⅜½⅝¾⅞⅓⅔])$/;

const MESSAGES = {
  empty: 'Type a number.',
  'not-a-number': 'Use figures only, such as 1.15 or 1 1/2.',
  'zero-denominator': 'The lower figure of a fraction cannot be 0.',
} as const satisfies Partial<Record<ParseProblem, string>>;

/**
 * The number a person typed: decimals with a point or a comma, fractions (½, 1/2, 3 1/2, 3½),
 * a sign, and spaces around them.
 * @param symbol a unit that may stand behind the number and is ignored.
 */
export function parseNumber(text: string, symbol = ''): Parsed<number> {
  const bare = tidy(text, symbol);
  if (bare === '') return fail('empty');
  const negative = bare.startsWith('-');
  const size = parseSize(bare.replace(/^[+-] ?/, ''));
  if (!size.ok || !negative) return size;
  return { ok: true, value: size.value === 0 ? 0 : -size.value };
}

function tidy(text: string, symbol: string): string {
  const plain = text.replace(/[−–]/g, '-').replace(/⁄/g, '/').replace(/\s+/g, ' ').trim();
  const cut = symbol !== '' && plain.endsWith(symbol) ? plain.slice(0, -symbol.length) : plain;
  return cut.replace(/ ?\/ ?/g, '/').trim();
}

function parseSize(bare: string): Parsed<number> {
  if (DECIMAL.test(bare)) return finite(Number(bare.replace(',', '.')));
  const vulgar = VULGAR.exec(bare);
  if (vulgar) return finite(Number(vulgar[1] ?? '') + vulgarValue(vulgar[2] ?? ''));
  const fraction = FRACTION.exec(bare);
  if (!fraction) return fail('not-a-number');
  const lower = Number(fraction[3]);
  if (lower === 0) return fail('zero-denominator');
  return finite(Number(fraction[1] ?? 0) + Number(fraction[2]) / lower);
}

function vulgarValue(character: string): number {
  return (VULGAR_EIGHTHS[character] ?? 0) / 8 + (VULGAR_THIRDS[character] ?? 0) / 3;
}

function finite(value: number): Parsed<number> {
  return Number.isFinite(value) ? { ok: true, value } : fail('not-a-number');
}

function fail(problem: keyof typeof MESSAGES): Parsed<never> {
  return { ok: false, problem, message: MESSAGES[problem] };
}
