import type { KitQuantity } from '../../engine/kit/kit-spread';
import type { ChanceRange } from '../../engine/player/some-players';
import type { Certainty } from '../../engine/room/certainty';
import type { EndedBy, WindowEnd } from '../../engine/room/windows';
import type { ShownWindow } from '../../state/room-window';
import { formatNumber, formatQuantity } from '../../units/format-number';
import { LENGTH_UNITS, lengthInUnit } from '../../units/length-unit';
import { quantityWithSide } from '../../units/side-words';
import type { UnitFacts } from '../../units/unit-facts';
import type { LengthUnit } from '../../units/unit-names';
import { QUANTITY_WORDS } from '../../words/quantity-words';

/** How often, as people count: of ten tries, or of twenty towards the ends. */
export function chanceWords(share: number): string {
  if (share < 0.05) return 'less than 1 in 20';
  if (share < 0.075) return 'about 1 in 20';
  if (share < 0.95) return `about ${Math.max(1, Math.round(share * 10))} in 10`;
  return share < 0.975 ? 'about 19 in 20' : 'nearly always';
}

/** The same for somebody, in two or three words more: "6 in 10 for you". */
export function chanceForWords(share: number, whom: string): string {
  return `${chanceWords(share).replace(/^about (?=\d+ in 10$)/, '')} for ${whom}`;
}

/** How far that may be off for what is not known of the player, of ten; null where it hardly is. */
export function rangeOfTen(range: ChanceRange | null): readonly [number, number] | null {
  if (range === null) return null;
  const [low, high] = [Math.round(range.low * 10), Math.round(range.high * 10)];
  return low === high ? null : [low, high];
}

/**
 * How sure the aim is, and what leaves the most open.
 * @param aimSdM one standard deviation of the aim, on the leading ball
 */
export function certaintyWords(
  { contributions }: Certainty,
  aimSdM: number,
  unit: LengthUnit,
  isMeasured: (quantity: KitQuantity) => boolean,
): string {
  const facts = LENGTH_UNITS[unit];
  const size = lengthInUnit(aimSdM, unit);
  const [most] = contributions;
  if (!most || Number(formatNumber(size, facts)) === 0) return 'sure of the aim, whatever the kit';
  const { thing } = QUANTITY_WORDS[most.quantity];
  const why = isMeasured(most.quantity) ? `mostly the ${thing}` : `${thing} not measured`;
  return `sure to ±${formatQuantity(size, facts)}: ${why}`;
}

/** What becomes of the shot beyond the end of a window. */
export const MISS_WORDS: Readonly<Record<EndedBy, string>> = {
  thin: 'thin',
  full: 'full',
  left: 'wide left',
  right: 'wide right',
  untouched: 'misses the ball',
  short: 'stops short',
  miscue: 'miscue',
  'other-ball': 'another ball',
  kiss: 'a second kiss',
  'other-way': 'by another way',
  range: '',
};

/**
 * Where a window begins and ends, and what becomes of the shot beyond: "from 1.4 (thin) to 2.1 m/s
 * (full)". Follows "goes".
 */
export function windowWords({ low, high }: ShownWindow, facts: UnitFacts): string {
  const written = { ...facts, decimals: decimalsFor(low, high, facts), eighths: false };
  const write = ({ value }: WindowEnd) =>
    facts.sides ? quantityWithSide(value, written) : formatNumber(value, written);
  const unit = facts.sides ? '' : `${facts.spaced ? ' ' : ''}${facts.symbol}`;
  const figure = write(low);
  const isOpen = low.endedBy === 'range' && high.endedBy === 'range';
  if (figure === write(high) && !isOpen) {
    const only = /[1-9]/.test(figure) ? `only at ${figure}${unit}, ` : '';
    return only + hairWords(written, MISS_WORDS[low.endedBy], MISS_WORDS[high.endedBy]);
  }
  const from = `from ${figure}`;
  const to = `${write(high)}${unit}${missOf(high)}`;
  if (isOpen) return 'whatever it is';
  if (low.endedBy === 'range') return `up to ${to}`;
  if (high.endedBy === 'range') return `${from}${unit}${missOf(low)} up`;
  return `${from}${missOf(low)} to ${to}`;
}

/** Of a window that is too narrow for its ends to be told apart: "less than 1 mm either way (full, thin)". */
export function hairWords(facts: UnitFacts, ...misses: readonly string[]): string {
  const most = formatQuantity(10 ** -facts.decimals, facts);
  return `less than ${most} either way (${[...new Set(misses.filter(Boolean))].join(', ')})`;
}

function missOf({ endedBy }: WindowEnd): string {
  return ` (${MISS_WORDS[endedBy]})`;
}

/** What becomes of a shot beyond the end, as a sentence goes on. */
const BEYOND_WORDS: Readonly<Record<EndedBy, string>> = {
  thin: 'it misses thin',
  full: 'it misses full',
  left: 'it goes wide left',
  right: 'it goes wide right',
  untouched: 'it misses the ball',
  short: 'it stops short',
  miscue: 'the tip slips',
  'other-ball': 'another ball comes between',
  kiss: 'two balls kiss once more',
  'other-way': 'it goes another way',
  range: '',
};

/** What the two ends do, without figures: "Too far left it misses full, too far right it misses thin." */
export function endsInWords({ low, high }: ShownWindow, { sides }: UnitFacts): string {
  const ends = [
    [sides?.minus ?? 'less', low],
    [sides?.plus ?? 'more', high],
  ] as const;
  const told = ends.flatMap(([side, { endedBy }]) => {
    const far = side === 'left' || side === 'right' ? `too far ${side}` : `too ${side}`;
    return endedBy === 'range' ? [] : [`${far} ${BEYOND_WORDS[endedBy]}`];
  });
  // What both ends do is said once.
  const sentence = told.join(', ').replace(/( it misses) (\w+, .*)\1 /, '$1 $2 ');
  return sentence && `${sentence.charAt(0).toUpperCase()}${sentence.slice(1)}.`;
}

/** Steps that a window should span to be told well. */
const TOLD_STEPS = 5;

/** As many decimals as the window's width deserves. */
function decimalsFor(low: WindowEnd, high: WindowEnd, facts: UnitFacts): number {
  const wanted = Math.ceil(Math.log10(TOLD_STEPS / (high.value - low.value)));
  return Math.min(facts.decimals + 1, Math.max(facts.leastDecimals, wanted));
}
