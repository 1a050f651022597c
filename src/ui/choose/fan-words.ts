import type { NamedBall } from '../../engine/lie/position';
import type { FanPlay } from '../../engine/plan/ranked-way';
import type { Outcome } from '../../engine/table/table-play';
import type { TableShape } from '../../engine/table/table-shape';
import { ballWords, diamondWords, pocketWords } from './table-words';

const HITS: Readonly<Record<FanPlay['hit'], string>> = {
  true: 'true',
  thin: 'thin',
  full: 'full',
  'missed-thin': 'miss, thin',
  'missed-full': 'miss, full',
};

/** What stands at the end of each path, and before its line in words. */
export const FAN_LETTERS: Readonly<Record<FanPlay['hit'], string>> = {
  true: 'A',
  thin: 'B',
  full: 'C',
  'missed-thin': 'D',
  'missed-full': 'E',
};

/** What dots and ring of the drawing are. */
export const SPREAD_LINE =
  'Dots: where it rests in single strokes that go. The ring, where drawn, holds about two in three.';

/** What the lines of a fan are about. */
export const FAN_LEAD = 'Where the cue ball rests, in diamonds';

/** One line of the fan in words: "thin: 2.0 along, 1.5 from the left". */
export function fanLine({ hit, play }: FanPlay, shape: TableShape): string {
  const outcome = play.balls[0]?.outcome;
  return `${HITS[hit]}: ${outcome ? stopWords(outcome, shape) : 'nothing to tell'}`;
}

/**
 * Where a ball is left that was to fall: "; the 3: 7.5 along, 0.5 from the left"; empty where it falls.
 * @param balls as they were laid
 */
export function leftWords(
  { play }: FanPlay,
  ball: number,
  balls: readonly NamedBall[],
  shape: TableShape,
): string {
  const at = cueBallFirst(balls).findIndex(({ name }) => name === ball);
  const outcome = play.balls[at]?.outcome;
  if (outcome === undefined || outcome.kind === 'pocketed') return '';
  return `; ${ballWords(ball)}: ${stopWords(outcome, shape)}`;
}

/** The order in which a play tells of them. */
export function cueBallFirst(balls: readonly NamedBall[]): readonly NamedBall[] {
  return [...balls].sort((one, other) => Number(other.name === 'cue') - Number(one.name === 'cue'));
}

/** Where a ball ends: "2.0 along, 1.5 from the left". */
export function stopWords(outcome: Outcome, shape: TableShape): string {
  switch (outcome.kind) {
    case 'pocketed':
      return `scratch in the ${pocketWords(outcome.pocket)} pocket`;
    case 'off-table':
      return 'off the table';
    case 'hangs':
      return `hangs in the ${pocketWords(outcome.pocket)} pocket`;
    case 'unfinished':
      return 'too much to follow';
    case 'rests':
      return diamondWords(outcome, shape);
  }
}
