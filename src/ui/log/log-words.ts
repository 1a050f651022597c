import type { Stopped } from '../../engine/player/known-player';
import type { Result } from '../../engine/player/shot-line';
import type { PlayedShot } from '../../store/player';
import type { Preferences } from '../../store/records';
import { dayWords } from '../../units/ago-words';
import { degreesOf } from '../../units/angle-degrees';
import { roughDistance } from '../../units/rough-distance';
import { speedWord } from '../../units/speed-word';
import { cutWords } from '../choose/shot-words';
import { pocketWords } from '../choose/table-words';

/** What became of a shot, on its button and in a list. */
export const RESULT_WORDS: Readonly<Record<Result, string>> = {
  went: 'Went',
  thin: 'Too thin',
  full: 'Too full',
  left: 'Passed left',
  right: 'Passed right',
  short: 'Did not get there',
  untouched: 'Missed the ball',
};

/** Cut by less, nobody sees which side is the thin one (our judgement), degrees. */
const NEARLY_STRAIGHT_DEG = 2;

const isNearlyStraight = (cutRad: number) => Math.abs(degreesOf(cutRad)) < NEARLY_STRAIGHT_DEG;

/** What can be said of a shot, as its buttons lie: left and right where it is nearly straight. */
export function resultsOf({ cutRad }: Pick<PlayedShot['shot'], 'cutRad'>): readonly Result[] {
  const sides = isNearlyStraight(cutRad)
    ? (['left', 'right'] as const)
    : (['thin', 'full'] as const);
  return ['went', ...sides, 'short', 'untouched'];
}

/**
 * What became of a shot as its buttons have it. What is said is kept as it was said, for either name
 * is learnt from alike; a shot said before to have gone thin is told by its side too.
 */
export function toldResult({ result, shot }: Pick<PlayedShot, 'result' | 'shot'>): Result {
  const { cutRad } = shot;
  const isBySide = result === 'thin' || result === 'full';
  if (!isBySide || cutRad === 0 || !isNearlyStraight(cutRad)) return result;
  // Cut too much to the right, it passes right.
  return (result === 'thin') === cutRad > 0 ? 'right' : 'left';
}

/** The same in words. */
export function resultWords(played: Pick<PlayedShot, 'result' | 'shot'>): string {
  return RESULT_WORDS[toldResult(played)];
}

/** Off the middle by less, as a fraction of the radius, nobody speaks of it. */
const SOME_TIP = 0.04;

/** A shot in a few words: "cut 24° → right, 0.70 m, left side, medium, far right pocket". */
export function shotLine(
  { shot, position }: Pick<PlayedShot, 'shot' | 'position'>,
  { distanceUnit }: Pick<Preferences, 'distanceUnit'>,
  tableLengthM: number,
): string {
  const { cutRad, distanceM, side, height, speedMps } = shot;
  const lengthM = position?.lengthM ?? tableLengthM;
  const tip = [
    ...(Math.abs(height) < SOME_TIP ? [] : [height > 0 ? 'high' : 'low']),
    ...(Math.abs(side) < SOME_TIP ? [] : [side > 0 ? 'right side' : 'left side']),
  ];
  return [
    cutWords(cutRad),
    roughDistance(distanceM, distanceUnit, lengthM),
    ...(tip.length === 0 ? ['centre'] : tip),
    speedWord(speedMps),
    ...(position ? [`${pocketWords(position.goal.pocket)} pocket`] : []),
  ].join(', ');
}

const STOP_WORDS: Readonly<Record<Stopped, string>> = {
  in: 'stopped on the spot',
  short: 'stopped short of the spot',
  long: 'rolled past the spot',
};

/** What else was said of a shot: "scratched", "not as meant"; may be empty. */
export function besideWords({ scratched, asMeant, testId, drill }: PlayedShot): string {
  const stopped = drill?.rung?.stopped;
  const parts = [
    ...(stopped ? [STOP_WORDS[stopped]] : []),
    ...(scratched ? ['scratched'] : []),
    ...(asMeant ? [] : ['not as meant, not learnt from']),
    ...(testId === null ? [] : ['level test']),
    ...(drill === null ? [] : ['practice']),
  ];
  return parts.join(', ');
}

/** A day as the list's heading: "Today", "3 Mar". */
export function dayHeading(atMs: number, nowMs: number): string {
  if (atMs === 0) return 'Day not known';
  const day = dayWords(atMs, nowMs);
  return day === dayWords(nowMs, nowMs) ? 'Today' : day;
}

/** "14:05", by the reader's clock; empty where it is not known. */
export function timeWords(atMs: number): string {
  return atMs === 0 ? '' : new Date(atMs).toTimeString().slice(0, 5);
}

/** "11 of 20 went". */
export function wentWords(shots: readonly Pick<PlayedShot, 'result'>[]): string {
  const went = shots.filter(({ result }) => result === 'went').length;
  return `${went} of ${shots.length} went`;
}
