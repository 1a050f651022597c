import type { RankedWay } from '../../engine/plan/ranked-way';
import type { Telling } from '../chance-telling';
import { capitalised, percentWords } from './table-words';
import { outcomeWords, reasonWords } from './way-words';

/** What the list is ordered by. */
export function orderWords(hasZone: boolean, telling: Telling, whom: string): string {
  if (telling === 'ease') {
    return hasZone ? 'The easiest to make and leave in the zone first' : 'The easiest first';
  }
  return hasZone
    ? `By how often the ball goes for ${whom} and the cue ball ends in the zone`
    : `By how often the ball goes for ${whom} without a scratch`;
}

/** Why most of the ways are no easier; null where each has a reason of its own. */
export function sharedReason(ways: readonly RankedWay[]): string | null {
  const reasons = ways.map(reasonWords);
  const count = (reason: string) => reasons.filter((one) => one === reason).length;
  return reasons.find((reason) => 2 * count(reason) > Math.max(2, reasons.length)) ?? null;
}

/** That reason, to be said once for all of them. */
export function sharedLine(ways: readonly RankedWay[], shared: string): string {
  const isAll = ways.every((way) => reasonWords(way) === shared);
  return `${isAll ? 'All of them' : 'Where nothing else is said'}: ${shared}.`;
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
  const reason = reasonWords(ranked);
  const parts = [
    ...outcomeWords(ranked, telling),
    ...speedWords(ranked),
    ...spreadWords(ranked, sizeWords),
  ];
  return [parts.join(', '), ...(reason === shared ? [] : [reason])]
    .filter((part) => part !== '')
    .map(capitalised)
    .join('. ');
}

/** More room than this for the speed is no more worth telling, as a share of it. */
const AMPLE = 0.25;

/** How far the speed alone may be off, where that is little: "at most 8 % slower, 12 % faster". */
function speedWords({ windows, option: { stroke } }: RankedWay): readonly string[] {
  if (windows === null) return [];
  const offAt = ({ value }: { readonly value: number }) => Math.abs(value / stroke.speedMps - 1);
  const ends = [
    [offAt(windows.speedMps.low), 'slower'],
    [offAt(windows.speedMps.high), 'faster'],
  ] as const;
  const told = ends.filter(([off]) => off < AMPLE);
  if (told.length === 0) return [];
  return [`at most ${told.map(([off, how]) => `${percentWords(off)} ${how}`).join(', ')}`];
}

function spreadWords(
  { rest }: RankedWay,
  sizeWords: (lengthM: number) => string,
): readonly string[] {
  return rest.places.length === 0 ? [] : [`cue ball spreads ${sizeWords(rest.sdM)}`];
}
