import { likelihoodOf } from '../../src/engine/player/known-player';
import type { LoggedShot } from '../../src/engine/player/learn';
import type { Player } from '../../src/engine/player/player-of';
import { onCue, type PlainLine } from '../../src/engine/player/shot-line';
import type { Forecaster } from './forecaster';
import { FALSE_SHARE, hiddenNumbers } from './hidden-stroke';
import { seededRandom } from './seeded-random';

/** The results that a careless entry may name. */
const KINDS = 5;

/**
 * The best forecast there can be: by who knows the law that hidden players are drawn from, and weighs
 * many of them by all that was logged.
 */
export function idealForecaster(pool: readonly Player[], shots: readonly LoggedShot[]): Forecaster {
  const logs = pool.map((player) =>
    shots.reduce((sum, { line, result, aimOffRad }) => {
      const likely = likelihoodOf(player, line, result, aimOffRad);
      return sum + Math.log((1 - FALSE_SHARE) * likely + FALSE_SHARE / KINDS);
    }, 0),
  );
  const most = logs.reduce((high, log) => Math.max(high, log), Number.NEGATIVE_INFINITY);
  const weighed = pool.flatMap((player, index) => {
    const weight = Math.exp((logs[index] ?? 0) - most);
    return weight < NEGLIGIBLE ? [] : [{ player, weight }];
  });
  const total = weighed.reduce((sum, { weight }) => sum + weight, 0);
  return (line) =>
    weighed.reduce((sum, { player, weight }) => {
      return sum + (weight / total) * likelihoodOf(player, line, 'went');
    }, 0);
}

const NEGLIGIBLE = 1e-9;

/** Players by the law of hidden ones, each with a cue of their own. */
export function hiddenPool(size: number, question: PlainLine): readonly Player[] {
  const random = seededRandom(4242);
  return Array.from({ length: size }, () =>
    hiddenNumbers(random, (squirtSds) => onCue(question, squirtSds)),
  );
}
