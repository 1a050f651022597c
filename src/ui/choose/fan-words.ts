import type { FanPlay } from '../../engine/options/ranked-way';
import type { Outcome } from '../../engine/table/table-play';
import type { TableShape } from '../../engine/table/table-shape';
import { diamondWords, pocketWords } from './table-words';

const HITS: Readonly<Record<FanPlay['hit'], string>> = {
  true: 'true',
  thin: 'thin',
  full: 'full',
  'missed-thin': 'miss, thin',
  'missed-full': 'miss, full',
};

/** What stands at the end of a path: "true", "full: scratch". */
export function fanLabel({ hit, play }: FanPlay): string {
  const kind = play.balls[0]?.outcome.kind;
  if (kind === 'pocketed') return `${HITS[hit]}: scratch`;
  return kind === 'off-table' ? `${HITS[hit]}: off the table` : HITS[hit];
}

/** What the lines of a fan are about. */
export const FAN_LEAD = 'Where the cue ball rests, in diamonds';

/** One line of the fan in words: "thin: 2.0 up, 1.5 from the left". */
export function fanLine({ hit, play }: FanPlay, shape: TableShape): string {
  const outcome = play.balls[0]?.outcome;
  return `${HITS[hit]}: ${outcome ? outcomeWords(outcome, shape) : 'nothing to tell'}`;
}

function outcomeWords(outcome: Outcome, shape: TableShape): string {
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
