import type { Worth } from '../../../engine/worth/worth';
import type { After, Miss } from '../../../engine/worth/worth-parts';
import type { Play, WaysOrder, WorthyWay } from '../../../engine/worth/worthy-ways';
import { degreesOf } from '../../../units/angle-degrees';
import { easeWords, type Telling } from '../../chance-telling';
import { ballWords, pocketWords } from '../table-words';
import { riskWords, sentences } from '../way-words';

/** What the list is ordered by, in one sentence. */
export const ORDER_LINES: Readonly<Record<WaysOrder, string>> = {
  worth: 'Worth is how often you would win with a ball or two to go, by what each leaves.',
  goes: 'By how often each goes, whatever comes after; safeties last.',
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

/** What a way is worth, part by part: "goes 6 in 10 · then 5 in 10 · theirs 3 in 10". */
export function partsLine(told: Play, telling: Telling, order: WaysOrder): string {
  const { worth } = told;
  const parts =
    'struck' in told
      ? safetyParts(worth.miss, telling)
      : [
          ...leadPart(worth, telling, order),
          ...thenPart(worth, telling),
          ...(worth.miss ? [`theirs ${partWords(worth.miss.theirBest, telling)}`] : []),
        ];
  return parts.join(' · ');
}

/** The figure that the list is not ordered by. */
function leadPart({ goes, worth }: Worth, telling: Telling, order: WaysOrder): readonly string[] {
  if (order === 'worth') {
    return [`${telling === 'ease' ? 'the pot' : 'goes'} ${partWords(goes, telling)}`];
  }
  return telling === 'ease' ? [] : [`worth ${partWords(worth, telling)}`];
}

function thenPart({ after, wins, goes }: Worth, telling: Telling): readonly string[] {
  if (after !== null) return [`then ${partWords(after.chance, telling)}`];
  if (wins > 0) return ['then it is won'];
  return goes > 0 ? ['then no straight shot'] : [];
}

function safetyParts(miss: Miss | null, telling: Telling): readonly string[] {
  if (miss === null) return [];
  const { theirBest, hooked, foul } = miss;
  return [
    `theirs ${partWords(theirBest, telling)}`,
    ...riskWords(hooked, telling, 'hooked'),
    ...riskWords(foul, telling, 'foul', 'a foul'),
  ];
}

/** Why a way is worth what it is: what comes when it goes, and what they have when the turn passes. */
export function whyLines(told: Play, telling: Telling): readonly string[] {
  const { worth } = told;
  const goes = 'struck' in told ? [] : goesLine(worth, telling);
  return [...goes, ...(worth.miss ? [missLine(worth.miss, telling)] : [])];
}

function goesLine({ goes, after, wins }: Worth, telling: Telling): readonly string[] {
  if (goes === 0) return [];
  const often = telling === 'figures' ? ` (${partWords(goes, telling)})` : '';
  return [`When it goes${often}, ${nextWords(after, wins, telling)}.`];
}

function nextWords(after: After | null, wins: number, telling: Telling): string {
  if (after === null) return wins > 0 ? 'it is won' : 'no straight shot is left';
  const { ball, pocket, chance } = after;
  return `next is mostly ${ballWords(ball)} ${pocketWords(pocket)}: ${partWords(chance, telling)}`;
}

function missLine({ share, theirBest, hooked, foul }: Miss, telling: Telling): string {
  const often = telling === 'figures' ? ` (${partWords(share, telling)})` : '';
  const risks = [
    ...riskWords(hooked, telling, 'hooked'),
    ...riskWords(foul, telling, 'a foul, ball in hand,', 'a foul, ball in hand'),
  ];
  const theirs = `${theyHave(theirBest, telling)}, if they play as well`;
  return `${[`When the turn passes${often}, ${theirs}`, ...risks].join('; ')}.`;
}

function theyHave(share: number, telling: Telling): string {
  return `${telling === 'figures' ? 'they have' : 'theirs is'} ${partWords(share, telling)}`;
}

/** From so much on it matters to which side a shot is missed. */
const CLEARLY = 0.15;
/** Of fewer misses than this to a side nothing is told. */
const ENOUGH = 0.1;

/** "Missed thin they have 2 in 10, missed full 7 in 10: miss thin."; empty where it hardly matters. */
export function missSideLine({ miss }: Pick<Worth, 'miss'>, telling: Telling): string {
  if (!miss?.thin || !miss.full) return '';
  const { thin, full } = miss;
  const [ofThin, ofFull] = [thin, full].map(({ theirBest }) => partWords(theirBest, telling));
  const differs = Math.abs(thin.theirBest - full.theirBest) >= CLEARLY && ofThin !== ofFull;
  if (!differs || Math.min(thin.share, full.share) < ENOUGH) return '';
  const better = thin.theirBest < full.theirBest ? 'thin' : 'full';
  return `Missed thin ${theyHave(thin.theirBest, telling)}, missed full ${ofFull}: miss ${better}.`;
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
  const lines = [
    ...whyLines(told, telling),
    missSideLine(told.worth, telling),
    'struck' in told ? '' : slopeLine(told),
  ];
  const worth = telling === 'figures' ? [`worth ${partWords(told.worth.worth, telling)}`] : [];
  return sentences([
    ...worth,
    ...lines.filter((line) => line !== '').map((line) => line.replace(/\.$/, '')),
  ]);
}
