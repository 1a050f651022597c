import type { DrillShot, Theme } from './drill-shot';
import { likelihoodOf, likelihoodOfStop } from './known-player';
import { LAYOUTS, type LevelShot, type LevelTable, layShots, levelTest, PLAIN } from './level-test';
import { playerOf } from './player-of';
import type { SomePlayers } from './some-players';
import { speedShots } from './speed-shots';

/** As a fraction of the radius: two thirds of what a chalked tip holds (common practice, no source). */
const SIDE = 0.33;
/** Of each layout's cue balls: with side as many more would take as long again to be worked out. */
const CUE_BALLS = 2;

/** The shots of a theme on a table, by the diamonds; those that have no aim there are left out. */
export function drillShots(theme: Theme, table: LevelTable): readonly DrillShot[] {
  if (theme === 'speed') return speedShots(table);
  const shots = theme === 'line' ? levelTest(table) : withSide(table);
  return shots.map((shot) => {
    const [, low, high] = shot.line.edges;
    return { ...shot, room: (high - low) / 2, rest: null };
  });
}

function withSide(table: LevelTable): readonly LevelShot[] {
  const strokes = [SIDE, -SIDE].map((side) => ({ ...PLAIN, side }));
  const layouts = LAYOUTS.map(({ ball, cueBalls }) => ({
    ball,
    cueBalls: cueBalls.slice(0, CUE_BALLS),
  }));
  return layShots(table, layouts, ['far-right'], strokes);
}

/** Shots of a theme, and how often one of them should be made. */
export interface RungJob {
  readonly some: SomePlayers;
  readonly shots: readonly DrillShot[];
  readonly chance: number;
  /** Places of shots not to be taken, while there are others. */
  readonly not: readonly number[];
}

/** A shot of several, by its place, and how often it is made: 0 to 1. */
export interface Rung {
  readonly at: number;
  readonly chance: number;
}

/**
 * The shot made nearest to so often, by the mean over all who may be the player; null of none.
 * What is chosen so teaches no less of the player: a result is weighed by the shot that was asked.
 */
export function nearestRung({ some, shots, chance, not }: RungJob): Rung | null {
  const all = shots.map((shot, at) => ({ at, chance: madeShare(some, shot) }));
  const others = all.filter(({ at }) => !not.includes(at));
  const offBy = (one: Rung) => Math.abs(one.chance - chance);
  return [...(others.length > 0 ? others : all)].sort((a, b) => offBy(a) - offBy(b))[0] ?? null;
}

function madeShare(some: SomePlayers, { line, rest }: DrillShot): number {
  let sum = 0;
  for (const unknowns of some) {
    const player = playerOf(unknowns);
    const stops = rest ? likelihoodOfStop(player, rest, 'in') : 1;
    sum += stops * likelihoodOf(player, line, 'went');
  }
  return sum / some.length;
}
