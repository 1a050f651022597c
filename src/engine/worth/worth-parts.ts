import type { PocketName } from '../table/pocket-shape';
import type { Easiest } from './ease';
import type { StrokeWorth } from './stroke-worth';
import type { HitSide } from './thin-or-full';

/** The next shot where a way goes and the turn goes on. */
export interface After {
  /** The ball and the pocket that are the easiest most often. */
  readonly ball: number;
  readonly pocket: PocketName;
  /** The mean ease of the easiest, 0 to 1. */
  readonly chance: number;
}

/** What misses to one side leave. */
export interface MissSide {
  /** Of all misses, how many are to this side. */
  readonly share: number;
  readonly theirBest: number;
}

/** What the other player has where the turn passes. */
export interface Miss {
  /** Of all strokes, how many pass the turn. */
  readonly share: number;
  /** The mean ease of their best shot; after a foul with the ball in hand. */
  readonly theirBest: number;
  /** How often the cue ball can be sent straight at no ball of theirs. */
  readonly hooked: number;
  readonly foul: number;
  /** Where the first ball is hit thinner or fuller than meant; null where there is no such miss. */
  readonly thin: MissSide | null;
  readonly full: MissSide | null;
}

/** A drawn stroke of a way. */
export interface JudgedStroke extends StrokeWorth {
  readonly goes: boolean;
  readonly side: HitSide | null;
}

/** The next shot, of strokes that go; one that leaves no straight shot counts as 0. */
export function afterOf(strokes: readonly JudgedStroke[]): After | null {
  const on = strokes.filter(({ goes, hasWon, theirs }) => goes && !hasWon && theirs === null);
  const most = mostOften(on.flatMap(({ next }) => next ?? []));
  if (most === null) return null;
  const { ball, pocket } = most;
  return { ball, pocket, chance: mean(on.map(({ next }) => next?.chance ?? 0)) };
}

function mostOften(all: readonly Easiest[]): Easiest | null {
  const counts = new Map<string, { readonly one: Easiest; times: number }>();
  for (const one of all) {
    const key = `${one.ball} ${one.pocket}`;
    const counted = counts.get(key);
    if (counted === undefined) counts.set(key, { one, times: 1 });
    else counted.times++;
  }
  const [first] = [...counts.values()].sort((a, b) => b.times - a.times);
  return first?.one ?? null;
}

/** What the other player has, of strokes that pass the turn. */
export function missOf(strokes: readonly JudgedStroke[]): Miss | null {
  const missed = strokes.flatMap(({ theirs, side }) => (theirs === null ? [] : [{ theirs, side }]));
  if (missed.length === 0) return null;
  const sideOf = (name: HitSide): MissSide | null => {
    const to = missed.filter(({ side }) => side === name);
    if (to.length === 0) return null;
    return {
      share: to.length / missed.length,
      theirBest: mean(to.map(({ theirs }) => theirs.best)),
    };
  };
  return {
    share: missed.length / strokes.length,
    theirBest: mean(missed.map(({ theirs }) => theirs.best)),
    hooked: shareOf(missed, ({ theirs }) => theirs.isHooked),
    foul: shareOf(missed, ({ theirs }) => theirs.isFoul),
    thin: sideOf('thin'),
    full: sideOf('full'),
  };
}

/** 0 of none. */
export function mean(list: readonly number[]): number {
  return list.length === 0 ? 0 : list.reduce((sum, one) => sum + one, 0) / list.length;
}

/** Of none 0. */
export function shareOf<T>(list: readonly T[], is: (one: T) => boolean): number {
  return list.length === 0 ? 0 : list.filter(is).length / list.length;
}
