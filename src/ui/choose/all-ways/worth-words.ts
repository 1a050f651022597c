import type { Worth } from '../../../engine/worth/worth';
import type { After, Miss } from '../../../engine/worth/worth-parts';
import type { Play, WorthyWay } from '../../../engine/worth/worthy-ways';
import type { ListOrder } from '../../../state/choose/all-ways/list-order';
import { degreesOf } from '../../../units/angle-degrees';
import { easeWords, type Telling } from '../../chance-telling';
import { ballWords, pocketWords } from '../table-words';
import { riskWords, scratchOfThese, sentences } from '../way-words';

/** What the list is ordered by, in one sentence. */
export const ORDER_LINES: Readonly<Record<ListOrder, string>> = {
  worth: 'Worth is how often you would win with a ball or two to go, by what each leaves.',
  goes: 'By how often each goes, whatever comes after; safeties last.',
  zone: 'By how often each goes and stops in the zone; safeties last.',
};

/** What puts the list in that order. */
export const ORDER_BUTTONS: Readonly<Record<ListOrder, string>> = {
  worth: 'Wisest first',
  goes: 'Likeliest first',
  zone: 'Zone first',
};

/** A share as players say it; where no figure is told, how easy that is. */
export function partWords(share: number, telling: Telling): string {
  if (telling === 'ease') return easeWords(share);
  const tenths = Math.round(10 * share);
  if (tenths === 0) return 'under 1 in 10';
  return tenths === 10 ? 'over 9 in 10' : `${tenths} in 10`;
}

/** Within so much no way is called better than the other: about what the drawn strokes tell apart. */
const AS_GOOD = 0.03;
const MUCH = 0.15;

/** How good a way is beside the best, where no figure is told: "about as good". */
export function worthBeside(worth: number, best: number): string {
  const less = best - worth;
  if (less <= 0) return 'best';
  if (less < AS_GOOD) return 'about as good';
  return less < MUCH ? 'not as good' : 'far less good';
}

/** What a way is worth, part by part: "goes 6 in 10 · then yours 5 in 10 · else theirs 3 in 10". */
export function partsLine(told: Play, telling: Telling, order: ListOrder): string {
  const { worth } = told;
  const parts =
    'struck' in told
      ? safetyParts(worth.miss, telling)
      : [
          ...leadPart(told, telling, order),
          ...thenPart(worth, telling),
          ...(worth.miss ? [`else theirs ${partWords(worth.miss.theirBest, telling)}`] : []),
        ];
  return parts.join(' · ');
}

/** The figure that the list is not ordered by. */
function leadPart(told: WorthyWay, telling: Telling, order: ListOrder): readonly string[] {
  const { goes, worth } = told.worth;
  if (order === 'worth') {
    const often = partWords(goes, telling);
    return [
      telling === 'ease' ? `the pot ${often}` : `goes ${often}${scratchOfThese(told, telling)}`,
    ];
  }
  return telling === 'ease' ? [] : [`worth ${partWords(worth, telling)}`];
}

function thenPart({ after, wins, goes }: Worth, telling: Telling): readonly string[] {
  if (after !== null) return [`then yours ${partWords(after.chance, telling)}`];
  if (wins > 0) return ['then it is won'];
  return goes > 0 ? ['then no straight shot'] : [];
}

function safetyParts(miss: Miss | null, telling: Telling): readonly string[] {
  if (miss === null) return [];
  const { theirBest, hooked, foul } = miss;
  return [
    `theirs ${partWords(theirBest, telling)}`,
    ...riskWords(hooked, telling, 'they are hooked', 'hooked'),
    ...riskWords(foul, telling, 'you foul', 'a foul of yours'),
  ];
}

/** Of strokes that go, a way that goes less often as it is told than this goes mostly by luck. */
const BY_LUCK = 0.5;

/** Whether most strokes of a way that go do so by another way than the one told. */
export function isByLuck({ asTold }: Pick<WorthyWay, 'asTold'>): boolean {
  return asTold < BY_LUCK;
}

/** Said of a way that is opened. */
export const LUCK_LINE = 'mostly by luck: fewer than half of those that go do so as drawn';

/** Why a way is worth what it is: what comes when it goes, and what they have when the turn passes. */
export function whyLines(told: Play, telling: Telling): readonly string[] {
  const { worth } = told;
  const goes = 'struck' in told ? [] : goesLine(worth, telling);
  const { miss } = worth;
  if (miss === null) return goes;
  return [...goes, ...sideLine(miss, telling), missLine(miss, telling)];
}

function goesLine({ goes, after, wins }: Worth, telling: Telling): readonly string[] {
  if (goes === 0) return [];
  return [`When it goes${soOften(goes, telling)} ${nextWords(after, wins, telling)}.`];
}

function soOften(share: number, telling: Telling): string {
  return telling === 'figures' ? `, ${partWords(share, telling)} times,` : ',';
}

function nextWords(after: After | null, wins: number, telling: Telling): string {
  if (after === null) return wins > 0 ? 'it is won' : 'no straight shot is left';
  const { ball, pocket, chance } = after;
  const goes = telling === 'figures' ? ', which goes' : ':';
  const where = `${ballWords(ball)} ${pocketWords(pocket)}`;
  return `your next is mostly ${where}${goes} ${partWords(chance, telling)}`;
}

function missLine({ share, theirBest, hooked, foul }: Miss, telling: Telling): string {
  const risks = [
    ...riskWords(hooked, telling, 'they are hooked', 'hooked'),
    ...riskWords(foul, telling, 'with ball in hand, by your foul,', 'ball in hand, by your foul'),
  ];
  const goes = `${telling === 'figures' ? 'goes' : 'is'} ${partWords(theirBest, telling)}`;
  const theirs = `their best shot ${goes}, if they play as well`;
  const passes = `When the turn passes to them${soOften(share, telling)}`;
  return `${[`${passes} ${theirs}`, ...risks].join('; ')}.`;
}

/** From so much on it matters to which side a shot is missed. */
const CLEARLY = 0.1;
/** Of fewer misses than this to a side nothing is told. */
const ENOUGH = 0.1;

/** "Missed thin they have 2 in 10, missed full 7 in 10: miss thin."; none where it hardly matters. */
function sideLine({ thin, full }: Miss, telling: Telling): readonly string[] {
  if (thin === null || full === null) return [];
  const [ofThin, ofFull] = [thin, full].map(({ theirBest }) => partWords(theirBest, telling));
  const differs = Math.abs(thin.theirBest - full.theirBest) >= CLEARLY && ofThin !== ofFull;
  if (!differs || Math.min(thin.share, full.share) < ENOUGH) return [];
  const better = thin.theirBest < full.theirBest ? 'thin' : 'full';
  const have = telling === 'figures' ? 'they have' : 'theirs is';
  return [`Missed thin ${have} ${ofThin}, missed full ${ofFull}: miss ${better}.`];
}

/** A turn of less than this, degrees, and so little less by a firmer stroke, is not worth a line. */
const TOLD_DEG = 0.1;
const GAIN_DEG = 0.05;

/** "The bed’s slope turns this 1.2° at this speed; a quarter firmer, 0.8°."; empty where it hardly matters. */
export function slopeLine({ slope }: Pick<WorthyWay, 'slope'>): string {
  if (slope === undefined) return '';
  const [now, firmer] = [degreesOf(slope.turnRad), degreesOf(slope.firmerRad)];
  if (now < TOLD_DEG || now - firmer < GAIN_DEG) return '';
  return `The bed’s slope turns this ${now.toFixed(1)}° at this speed; a quarter firmer, ${firmer.toFixed(1)}°.`;
}

/** The same as one heard after another, without the last full stop. */
export function worthSentence(told: Play, telling: Telling): string {
  const lines = [...whyLines(told, telling), 'struck' in told ? '' : slopeLine(told)];
  const worth = telling === 'figures' ? [`worth ${partWords(told.worth.worth, telling)}`] : [];
  return sentences([...worth, ...lines.map((line) => line.replace(/\.$/, ''))]);
}
