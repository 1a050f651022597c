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

/** Whether two steps are the same. */
export function isStep(one: Step, other: Step): boolean {
  if (one.by !== other.by) return false;
  if ('ball' in one) return 'ball' in other && one.ball === other.ball;
  return 'cushion' in other && one.cushion === other.cushion;
}

/** Most cushions that a bank or a kick goes by. */
const MOST_CUSHIONS = 2;

/** How a ball falls to which this has happened; null where no kind of way goes like that. */
export function kindOfVia(via: readonly Step[], ball: number): WayKind | null {
  const cushions = via.findIndex((step) => 'ball' in step);
  const struck = via[cushions];
  if (struck === undefined || !('ball' in struck) || struck.by !== 'cue') return null;
  const rest = via.slice(cushions + 1);
  if (cushions > 0) {
    return cushions <= MOST_CUSHIONS && struck.ball === ball && rest.length === 0 ? 'kick' : null;
  }
  if (rest.length === 0) return struck.ball === ball ? 'direct' : null;
  if (isBank(rest, struck.ball, ball)) return 'bank';
  const [only] = rest;
  return rest.length === 1 && only !== undefined ? byAnotherBall(only, struck.ball, ball) : null;
}

/** Of a ball struck and one thing more. */
function byAnotherBall(step: Step, struck: number, ball: number): WayKind | null {
  if ('cushion' in step) return null;
  if (struck === ball) return step.by === ball ? 'carom' : null;
  if (step.ball !== ball) return null;
  if (step.by === 'cue') return 'carom';
  return step.by === struck ? 'combination' : null;
}

/** Off one cushion or two, and by the cue ball again at most once, after the first of them. */
function isBank(rest: readonly Step[], struck: number, ball: number): boolean {
  const cushions = rest.filter((step) => 'cushion' in step);
  const [first] = rest;
  return (
    struck === ball &&
    first !== undefined &&
    'cushion' in first &&
    cushions.length <= MOST_CUSHIONS &&
    cushions.every(({ by }) => by === ball) &&
    rest.length - cushions.length <= 1 &&
    rest.every((step) => 'cushion' in step || (step.ball === ball && step.by === 'cue'))
  );
}

/** Whether cue ball and object ball meet twice. */
export function isDoubleKiss(via: readonly Step[]): boolean {
  return via.some((step, at) =>
    via.slice(at + 1).some((later) => 'ball' in step && isStep(step, later)),
  );
}
