import type { RoomWindows } from '../room/windows';
import type { TablePlay } from '../table/table-play';
import type { StraySource } from './linear-chance';
import type { Option } from './solve-option';
import type { Way } from './way';

/** One way that is really different from the others, worked out in full. */
export interface RankedWay {
  readonly option: Option;
  readonly way: Way;
  /** That the ball goes, kit's uncertainty and all. */
  readonly chance: number;
  readonly chanceError: number;
  /** What makes it hard: the greatest of what sends the ball astray. */
  readonly hardest: StraySource;
  /** What each part of the stroke forgives; null where the true stroke itself hardly goes. */
  readonly windows: RoomWindows | null;
  /** Where the cue ball comes to rest when the ball goes: middle and standard deviations, m. */
  readonly rest: RestSpread;
  /** Of the strokes that go, how many leave the cue ball in the zone; null without a zone. */
  readonly goodPosition: number | null;
  /** Of the strokes that go, how many neither pocket the cue ball nor lose it; 1 where none is known. */
  readonly clean: number;
  /** How often the cue ball is pocketed or leaves the table, whether the ball goes or not. */
  readonly scratch: number;
}

/** Places where the cue ball rested in drawn strokes, and their middle. */
export interface RestSpread {
  readonly xM: number;
  readonly yM: number;
  /** Root mean square distance from the middle, m. */
  readonly sdM: number;
  readonly places: readonly { readonly xM: number; readonly yM: number }[];
}

/** A stroke a little off, played out. */
export interface FanPlay {
  /** True is the solved aim; thin and full are the edges of what still goes; misses lie beyond. */
  readonly hit: 'true' | 'thin' | 'full' | 'missed-thin' | 'missed-full';
  readonly aimRad: number;
  readonly play: TablePlay;
}
