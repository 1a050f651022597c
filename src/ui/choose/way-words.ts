import type { RankedWay } from '../../engine/plan/ranked-way';
import type { EndedBy, RoomWindow } from '../../engine/room/windows';
import type { Stroke } from '../../engine/stroke/stroke';
import { RAISED_CUE_RAD } from '../../state/shot-warnings';
import { DEGREES, degreesOf } from '../../units/angle-degrees';
import { formatQuantity } from '../../units/format-number';
import type { SpeedScale } from '../../units/speed-unit';
import { speedWord } from '../../units/speed-word';
import type { Telling } from '../chance-telling';
import { MISS_WORDS } from '../shot/room-words';
import type { TipTold } from '../shot/tip-told';
import { tipInWords } from '../shot/tip-words';
import { shortSpeed } from './chance-words';
import { tenthsWords } from './pocket-words';
import { capitalised } from './table-words';

/** Said of every raised cue. */
export const RAISED_LINE =
  'Raised cue: it can mark the cloth and send a ball off the table. The room’s rules come first.';

/** How a way is struck. */
export interface Played {
  readonly way: RankedWay['way'];
  readonly option: { readonly stroke: Omit<Stroke, 'aimRad'> };
}

/** The same as a line of its own, where a stroke takes a raised cue; a hair below, by rounding, counts. */
export function raisedLines({ elevationRad }: Pick<Stroke, 'elevationRad'>): readonly string[] {
  return elevationRad >= RAISED_CUE_RAD - 1e-6 ? [`▲ ${RAISED_LINE}`] : [];
}

/** Whether a way takes a raised cue: by choice, or over what lies behind the cue ball. */
export function isRaisedCue({ way, option }: Played): boolean {
  return way.isRaised || option.stroke.elevationRad >= RAISED_CUE_RAD;
}

/** As players call it: "outside, soft, roll". */
export function wayName(played: Played): string {
  const { side, arrival, isDrag } = played.way;
  const { stroke } = played.option;
  const little = stroke.side === 0 ? 'no side' : 'a touch of side';
  const parts = [
    side === 'none' ? little : side,
    speedWord(stroke.speedMps),
    isDrag ? `drag, ${arrival}` : arrival,
    ...(isRaisedCue(played) ? ['cue raised'] : []),
  ];
  return parts.join(', ');
}

/** What that counts. */
export function leadLabel(
  way: Pick<RankedWay, 'goodPosition' | 'clean'>,
  telling: Telling,
): string {
  const goes = telling === 'figures' ? 'goes' : 'for most';
  if (way.goodPosition !== null) return `${goes} and in the zone`;
  return isAtRisk(way) ? `${goes}, no scratch` : goes;
}

/** Of the strokes that go, those that keep the cue ball, and in the zone if there is one. */
export function keptShare({ goodPosition, clean }: RankedWay): number {
  return goodPosition ?? clean;
}

/** The figure that ways are ordered by: of all strokes those that go and keep the cue ball so. */
export function leadShare(way: RankedWay): number {
  return way.chance * keptShare(way);
}

/** Whether strokes that go scratch often enough to count in per cent. */
function isAtRisk({ clean }: Pick<RankedWay, 'clean'>): boolean {
  return clean < 0.995;
}

/** What comes of it beside the lead: "the pot alone: 3 in 10", "scratch 1 in 10"; may be empty. */
export function outcomeWords(way: RankedWay, telling: Telling): readonly string[] {
  const isLead = way.goodPosition === null && !isAtRisk(way);
  const ofThese = scratchOfThese(way, telling);
  const costs = ofThese === '' ? '' : `${ofThese} and cost the turn`;
  return [
    ...(isLead ? [] : [`the pot alone: ${tenthsWords(way.chance, telling)}${costs}`]),
    ...scratchWords(way, telling),
  ];
}

/** ", of these 3 in 10 scratch", after how often a way goes at all; empty where hardly any do. */
export function scratchOfThese({ clean }: Pick<RankedWay, 'clean'>, telling: Telling): string {
  if (telling === 'ease' || 1 - clean < NOW_AND_THEN) return '';
  const tenths = Math.round(10 * (1 - clean));
  return `, of these ${tenths === 0 ? 'a few' : tenthsWords(1 - clean, telling)} scratch`;
}

/** How often the cue ball is lost, where that is not told of those that go. */
export function scratchWords(
  way: Pick<RankedWay, 'clean' | 'scratch'>,
  telling: Telling,
): readonly string[] {
  if (scratchOfThese(way, telling) !== '') return [];
  return riskWords(way.scratch, telling, 'scratch', 'a scratch');
}

/** From so often on a mishap is worth a word. */
const NOW_AND_THEN = 0.03;
const OFTEN = 0.15;

/** How often a mishap happens: "scratch 1 in 10", "now and then a scratch"; empty where hardly ever. */
export function riskWords(
  share: number,
  telling: Telling,
  what: string,
  such = what,
): readonly string[] {
  if (share < NOW_AND_THEN) return [];
  if (telling === 'figures') return [`${what} ${tenthsWords(share, telling)}`];
  return [share < OFTEN ? `now and then ${such}` : `often ${such}`];
}

/** What comes of it, and why it is no easier, on one line; may be empty. */
export function wayLine(ranked: RankedWay, telling: Telling): string {
  return sentences([...outcomeWords(ranked, telling), reasonWords(ranked)]);
}

/** One after the other, without the last full stop; what is empty is left out. */
export function sentences(parts: readonly string[]): string {
  return parts
    .filter((part) => part !== '')
    .map(capitalised)
    .join('. ');
}

/** A way that goes as often as this is not hard: nothing of it is said to leave little room. */
const SURE = 0.8;
/** What strays by less than this share of what is open, one deviation, is not what makes a way hard. */
const STRAYS = 0.5;

/** Why it is no easier, in a few words; empty where nothing makes it hard, or no one thing is known to. */
export function tightWords({ hardest, chance, option }: RankedWay): string {
  if (chance >= SURE || option.chance.sds[hardest] < STRAYS) return '';
  return hardest === 'kit'
    ? 'most of the doubt is your kit: measuring it helps'
    : `the ${TIGHT[hardest]} leaves little room`;
}

/** The same, and what becomes of strokes that are off. */
export function reasonWords(way: RankedWay): string {
  const { hardest, windows, option } = way;
  const lead = tightWords(way);
  if (lead === '' || hardest === 'kit' || windows === null) return lead;
  return `${lead}${missWords(endsOf(hardest, windows, option.stroke.side))}`;
}

const TIGHT: Readonly<Record<Exclude<RankedWay['hardest'], 'kit'>, string>> = {
  direction: 'aim',
  side: 'side',
  height: 'tip’s height',
  elevation: 'butt’s height',
  speed: 'speed',
};

/** How one strays, and what becomes of it. */
type Stray = readonly [string, EndedBy];

type Windows = NonNullable<RankedWay['windows']>;

function endsOf(
  hardest: Exclude<RankedWay['hardest'], 'kit'>,
  windows: Windows,
  side: number,
): readonly Stray[] {
  switch (hardest) {
    case 'direction':
      return between(windows.aimRad, 'if aimed left', 'if aimed right');
    case 'side':
      return side < 0
        ? between(windows.side, 'with more', 'with less')
        : between(windows.side, 'with less', 'with more');
    case 'height':
      return between(windows.height, 'if lower', 'if higher');
    case 'elevation':
      return between(windows.elevationRad, 'if lower', 'if higher');
    case 'speed':
      return between(windows.speedMps, 'if slow', 'if fast');
  }
}

function between({ low, high }: RoomWindow, lower: string, higher: string): readonly Stray[] {
  return [
    [lower, low.endedBy],
    [higher, high.endedBy],
  ];
}

function missWords(ends: readonly Stray[]): string {
  const told = ends.filter(([, endedBy]) => endedBy !== 'range');
  if (told.length === 0) return '';
  return `: ${told.map(([how, endedBy]) => `${MISS_WORDS[endedBy]} ${how}`).join(', ')}`;
}

/** The stroke in figures: "⅜ tip right, ¼ tip low, cue 3° up, 1.6 m/s". */
export function strokeWords(
  { option: { stroke } }: Pick<Played, 'option'>,
  scale: SpeedScale,
  tip: TipTold,
): string {
  return [
    tipInWords(stroke, tip.unit, tip.scale),
    `cue ${formatQuantity(degreesOf(stroke.elevationRad), DEGREES)} up`,
    shortSpeed(stroke.speedMps, scale),
  ].join(', ');
}
