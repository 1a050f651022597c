import type { Kit } from '../kit/kit';
import { ballNamed, without } from '../lie/balls-of';
import type { BallName, NamedBall, Position } from '../lie/position';
import type { Stroke } from '../stroke/stroke';
import { playTable, type TableOptions } from '../table/play-table';
import type { TablePlay } from '../table/table-play';
import type { TableShape } from '../table/table-shape';

/** Balls on a table in the order in which they are played: the cue ball, and all others as given. */
export interface LaidTable {
  readonly balls: readonly NamedBall[];
  readonly names: readonly BallName[];
  readonly shape: TableShape;
}

/** Of balls that meet at the same moment the lower number goes first, so their order counts. */
export function laidTable(position: Position, shape: TableShape): LaidTable {
  const cueBall = ballNamed(position, 'cue');
  const balls = [...(cueBall === null ? [] : [cueBall]), ...without(position, 'cue')];
  return { balls, names: balls.map(({ name }) => name), shape };
}

/** @param stroke its aim is measured over the table; null: the engine does not take it */
export function playLaid(
  { balls, shape }: LaidTable,
  stroke: Stroke,
  kit: Kit,
  options: TableOptions = {},
): TablePlay | null {
  const play = playTable(balls, stroke, kit, shape, options);
  return play.ok ? play : null;
}
