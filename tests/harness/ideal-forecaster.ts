import { likelihoodOf } from '../../src/engine/player/known-player';
import type { LoggedShot } from '../../src/engine/player/learn';
import type { Player } from '../../src/engine/player/player-of';
import { onCue, type PlainLine } from '../../src/engine/player/shot-line';
import type { Forecaster } from './forecaster';
import { FALSE_SHARE, hiddenNumbers } from './hidden-stroke';
import { quantile } from './quantile';
import { between, type Random, seededRandom } from './seeded-random';

/** The results that a careless entry may name. */
const KINDS = 5;
/** Numbers that a hidden player is drawn by. */
const DRAWN_BY = 13;

/** Who may be the hidden player: the numbers it is drawn by, and how likely it makes the log. */
interface Candidate {
  readonly numbers: readonly number[];
  readonly player: Player & { readonly lineRad: number };
  readonly log: number;
}

/** What is made of a player's shots by who knows how such players are drawn. */
export interface BestGuess {
  readonly chanceOf: Forecaster;
  /** The middle of the scatters of the line on the question's shot, rad. */
  readonly lineRad: number;
}

/**
 * The best that there can be made of shots: by who knows the law that hidden players are drawn from.
 * Walks among the numbers they are drawn by, so that the law is that of hidden players itself. Source:
 * Metropolis et al., J. Chem. Phys. 21:1087 (1953) (from memory).
 *
 * @param shots aimed by their solved aim
 * @param steps of each walk; there are four
 */
export function bestGuess(
  shots: readonly LoggedShot[],
  question: PlainLine,
  steps: number,
): BestGuess {
  const random = seededRandom(4242);
  const candidate = (numbers: readonly number[]): Candidate => {
    const player = drawnBy(numbers, question);
    return { numbers, player, log: logOf(player, shots) };
  };
  const players = Array.from({ length: WALKS }, () => walk(candidate, steps, random)).flat();
  return {
    chanceOf: (line) =>
      players.reduce((sum, player) => sum + likelihoodOf(player, line, 'went'), 0) / players.length,
    lineRad: quantile(
      players.map(({ lineRad }) => lineRad),
      0.5,
    ),
  };
}

/** Walks from different places, lest one stays where it began. */
const WALKS = 4;
/** The best of so many is where a walk begins; of its way the first part is not looked at. */
const [TRIED, FIRST_SHARE] = [200, 0.2];
/** Steps that follow each other are much alike: one in so many counts. */
const COUNTED = 5;

function walk(
  candidate: (numbers: readonly number[]) => Candidate,
  steps: number,
  random: Random,
): readonly Candidate['player'][] {
  let at = candidate(Array.from({ length: DRAWN_BY }, random));
  for (let tried = 1; tried < TRIED; tried++) {
    const other = candidate(Array.from({ length: DRAWN_BY }, random));
    if (other.log > at.log) at = other;
  }
  const passed: Candidate['player'][] = [];
  for (let step = 0; step < steps; step++) {
    const next = candidate(nearby(at.numbers, random));
    if (Math.log(random()) < next.log - at.log) at = next;
    if (step >= FIRST_SHARE * steps && step % COUNTED === 0) passed.push(at.player);
  }
  return passed;
}

/** Some of the numbers moved, a little or a lot, round the ends: as likely there as back. */
function nearby(numbers: readonly number[], random: Random): readonly number[] {
  const reach = Math.exp(between(random, Math.log(0.01), Math.log(0.5)));
  return numbers.map((number) => {
    if (random() < 0.6) return number;
    const moved = number + between(random, -reach, reach);
    return moved - Math.floor(moved);
  });
}

function drawnBy(numbers: readonly number[], question: PlainLine) {
  const left = numbers.values();
  const random = () => {
    const { value } = left.next();
    if (value === undefined) throw new Error('a hidden player is drawn by more numbers');
    return value;
  };
  return hiddenNumbers(random, (squirtSds) => onCue(question, squirtSds));
}

function logOf(player: Player, shots: readonly LoggedShot[]): number {
  return shots.reduce((sum, { line, result }) => {
    const likely = likelihoodOf(player, line, result);
    return sum + Math.log((1 - FALSE_SHARE) * likely + FALSE_SHARE / KINDS);
  }, 0);
}
