import type { RankedWay } from '../../engine/plan/ranked-way';
import type { Telling } from '../chance-telling';
import { percentWords } from './table-words';
import { outcomeWords, sentences, tightWords } from './way-words';

/** What the list is ordered by. */
export function orderWords(hasZone: boolean, telling: Telling, whom: string): string {
  return telling === 'ease'
    ? `For most players, the easiest first${hasZone ? ': pot and zone' : ''}`
    : `For ${whom}, the likeliest first: pot ${hasZone ? 'and zone' : 'without a scratch'}`;
}

/** Why most of the ways are no easier; null where each has a reason of its own, or some have none. */
export function sharedReason(ways: readonly RankedWay[]): string | null {
  const reasons = ways.map(tightWords);
  if (reasons.includes('')) return null;
  const count = (reason: string) => reasons.filter((one) => one === reason).length;
  return reasons.find((reason) => 2 * count(reason) > Math.max(2, reasons.length)) ?? null;
}

/** That reason, to be said once for all of them. */
export function sharedLine(ways: readonly RankedWay[], shared: string): string {
  const isAll = ways.every((way) => tightWords(way) === shared);
  return `${isAll ? 'All of them' : 'Unless a way says otherwise'}: ${shared}.`;
}

/**
 * What sets a way apart from the others: its outcome, a want of room for speed, where the cue ball
 * ends.
 * @param sizeWords tells a length, m, in the person's unit
 */
export function rowLine(
  ranked: RankedWay,
  shared: string | null,
  telling: Telling,
  sizeWords: (lengthM: number) => string,
): string {
  const reason = tightWords(ranked);
  const parts = [
    ...outcomeWords(ranked, telling),
    ...speedWords(ranked),
    ...spreadWords(ranked, sizeWords),
  ];
  return sentences([...parts, ...(reason === shared ? [] : [reason])]);
}

/** More room than this for the speed is no more worth telling, as a share of it. */
const AMPLE = 0.25;

/** How far the speed alone may be off, where that is little: "no more than 8 % softer or 12 % firmer". */
function speedWords({ windows, option: { stroke } }: RankedWay): readonly string[] {
  if (windows === null) return [];
  const offAt = ({ value }: { readonly value: number }) => Math.abs(value / stroke.speedMps - 1);
  const ends = [
    [offAt(windows.speedMps.low), 'softer'],
    [offAt(windows.speedMps.high), 'firmer'],
  ] as const;
  const told = ends.filter(([off]) => off < AMPLE);
  if (told.length === 0) return [];
  return [
    `hit no more than ${told.map(([off, how]) => `${percentWords(off)} ${how}`).join(' or ')}`,
  ];
}

function spreadWords(
  { rest }: RankedWay,
  sizeWords: (lengthM: number) => string,
): readonly string[] {
  return rest.places.length === 0 ? [] : [`cue ball stops give or take ${sizeWords(rest.sdM)}`];
}
