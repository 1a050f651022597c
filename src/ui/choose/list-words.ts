import type { RankedWay } from '../../engine/options/ranked-way';
import { capitalised } from './table-words';
import { outcomeWords, reasonWords } from './way-words';

/** What the list is ordered by. */
export function orderWords(hasZone: boolean): string {
  return hasZone
    ? 'By how often the ball goes and the cue ball ends in the zone'
    : 'By how often the ball goes';
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

/** What sets a way apart from the others: its outcome, its room for speed, where the cue ball ends. */
export function rowLine(ranked: RankedWay, shared: string | null): string {
  const reason = reasonWords(ranked);
  const parts = [...outcomeWords(ranked), ...speedWords(ranked), ...spreadWords(ranked)];
  return [parts.join(', '), ...(reason === shared ? [] : [reason])]
    .filter((part) => part !== '')
    .map(capitalised)
    .join('. ');
}

/** How far the speed alone may be off: "speed −8 to +12 %". */
function speedWords({ windows, option }: RankedWay): readonly string[] {
  if (windows === null) return [];
  const { low, high } = windows.speedMps;
  const percent = (value: number) => Math.round(Math.abs(100 * (value / option.shot.speedMps - 1)));
  return [`speed −${percent(low.value)} to +${percent(high.value)} %`];
}

function spreadWords({ rest }: RankedWay): readonly string[] {
  return rest.places.length === 0 ? [] : [`cue ball spreads ${Math.round(100 * rest.sdM)} cm`];
}
