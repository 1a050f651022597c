import type { BallName } from '../lie/position';
import type { PocketName } from '../table/pocket-shape';

/** What a person wants done from a position, and keeps: a ball sent into a pocket. */
export interface Pot {
  readonly kind: 'pot';
  readonly ball: number;
  readonly pocket: PocketName;
  /** What it meets on its way: nothing, as long as nothing else can be chosen. */
  readonly via: readonly [];
}

/** A side of the table, seen from the break end; left and right are two cushions each. */
export type Rail = 'near' | 'far' | 'left' | 'right';

/** What happens on a ball's way: `by` is the ball that moves, and the other is what it meets. */
export type Step =
  | { readonly ball: number; readonly by: BallName }
  | { readonly cushion: Rail; readonly by: BallName };

/** What balls can be sent into a pocket by, the plainest first. */
export const WAY_KINDS = ['direct', 'bank', 'kick', 'combination', 'carom'] as const;
export type WayKind = (typeof WAY_KINDS)[number];
export type PlayedKind = Exclude<WayKind, 'direct'>;

/** What a way of playing a position does, by its kind: plain data. */
export type Goal = DirectGoal | PlayedGoal;

interface WayGoal {
  /** The one that falls. */
  readonly ball: number;
  readonly pocket: PocketName;
  /** All that happens on the way, in order: from the stroke until the ball falls. */
  readonly via: readonly Step[];
}

/** The cue ball cuts a ball straight into a pocket: told in closed form. */
export interface DirectGoal extends WayGoal {
  readonly kind: 'direct';
}

/**
 * What is found by playing it: the ball goes off cushions (a bank), or the cue ball before it meets it
 * (a kick); it is sent by another ball (a combination); or the cue ball, or the ball that falls, glances
 * off another (a carom).
 */
export interface PlayedGoal extends WayGoal {
  readonly kind: PlayedKind;
}

/** The wish to have a ball in a pocket by a direct cut. */
export function directCut(ball: number, pocket: PocketName): Pot {
  return { kind: 'pot', ball, pocket, via: [] };
}

/** What a direct cut does. */
export function directGoal(ball: number, pocket: PocketName): DirectGoal {
  return { kind: 'direct', ball, pocket, via: [{ ball, by: 'cue' }] };
}

/** A legal hit, straight or by cushions, that is chosen for what it leaves: nothing need fall. */
export interface SafetyGoal {
  readonly kind: 'safety';
  readonly ball: null;
  readonly pocket: null;
  /** What the cue ball does until it meets the first ball, in order. */
  readonly via: readonly Step[];
}
