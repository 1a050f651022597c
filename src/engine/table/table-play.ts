import type { Phase } from '../motion/phase';
import type { CushionName } from './cushion-shape';
import type { CushionPart } from './nearest-on-cushion';
import type { PocketName } from './pocket-shape';

/** Where the centre of a ball lies before the stroke, m. The first of a list is the cue ball. */
export interface PlacedBall {
  readonly xM: number;
  readonly yM: number;
}

/** What became of a ball. */
export type Outcome =
  | { readonly kind: 'rests'; readonly xM: number; readonly yM: number }
  /** It rests with its centre beyond the mouth of a pocket, and has not fallen. */
  | {
      readonly kind: 'hangs';
      readonly xM: number;
      readonly yM: number;
      readonly pocket: PocketName;
    }
  | { readonly kind: 'pocketed'; readonly pocket: PocketName; readonly timeS: number }
  /** It flew over a cushion, or over a pocket higher than the noses. */
  | {
      readonly kind: 'off-table';
      readonly xM: number;
      readonly yM: number;
      readonly timeS: number;
    }
  /** There was too much to follow; here it was last. */
  | { readonly kind: 'unfinished'; readonly xM: number; readonly yM: number };

interface At {
  readonly timeS: number;
  /** Its place in the list of balls. */
  readonly ball: number;
  /** Where its centre is, m. */
  readonly xM: number;
  readonly yM: number;
}

/** Something that happens on the table. */
export type TableEvent = At &
  (
    | { readonly kind: 'hits-ball'; readonly other: number }
    | {
        readonly kind: 'hits-cushion';
        readonly cushion: CushionName;
        readonly part: CushionPart;
      }
    | { readonly kind: 'pocketed'; readonly pocket: PocketName }
    | { readonly kind: 'off-table' }
    | { readonly kind: 'lands' }
    | { readonly kind: 'rolls' }
    | { readonly kind: 'rests' }
  );

/** One ball's part in a stroke. */
export interface BallRun {
  /** Where it lay before. */
  readonly from: PlacedBall;
  /** What it did, in order, each piece with its start; between two of them it lay still. */
  readonly phases: readonly Phase[];
  readonly outcome: Outcome;
}

/** A stroke played out until every ball lies still. */
export interface TablePlay {
  readonly ok: true;
  /** In the order of the balls asked about. */
  readonly balls: readonly BallRun[];
  /** In the order of time. Touches slower than 1 mm/s are played but not told. */
  readonly events: readonly TableEvent[];
  /** When the last ball came to rest, s. */
  readonly endS: number;
  /** False where the cap on events was met. */
  readonly complete: boolean;
}

/** Why a stroke cannot be played. */
export interface TableRefusal {
  readonly ok: false;
  readonly reason:
    | 'out-of-range'
    | 'beyond-miscue-limit'
    | 'never-stops'
    | 'no-balls'
    | 'off-bed'
    | 'overlap';
  /** The quantity that is out of range, dotted where nested. */
  readonly quantity?: string;
  /** The ball that lies badly: its place in the list of balls. */
  readonly ball?: number;
}
