import type { SpeedWindow } from './known-player';
import type { LevelShot } from './level-test';

/** What can be practised: the line, the speed, and the line with side. */
export const THEMES = ['line', 'speed', 'side'] as const;
export type Theme = (typeof THEMES)[number];

/** Where the cue ball is to rest, m, and between which speeds it does. */
export interface AskedRest extends SpeedWindow {
  readonly xM: number;
  readonly yM: number;
  readonly radiusM: number;
}

/** A shot to practise as it is to be laid and played: plain data. */
export interface DrillShot extends LevelShot {
  /**
   * How far what it is about may be off either way, all else as meant: the line, rad; where the cue
   * ball is to rest, the logarithm of the speed.
   */
  readonly room: number;
  /** Where the cue ball is to rest as well; null: anywhere. */
  readonly rest: AskedRest | null;
}
