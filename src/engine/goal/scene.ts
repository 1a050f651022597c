import type { Kit } from '../kit/kit';
import { ballNamed, without } from '../lie/balls-of';
import type { NamedBall, Position } from '../lie/position';
import type { Stroke } from '../stroke/stroke';
import { playTable, type TableOptions } from '../table/play-table';
import type { TablePlay } from '../table/table-play';
import type { TableShape } from '../table/table-shape';
import type { Pot } from './goal';

/** A round patch of the bed in which the cue ball would do well, m. */
export interface RestZone {
  readonly xM: number;
  readonly yM: number;
  readonly radiusM: number;
}

/** A table with balls on it and what is to be done there, all in the table's own frame. */
export interface Scene {
  readonly position: Position;
  readonly goal: Pot;
  /** Of the straight line over the table, as in a shot from a position, rad. */
  readonly headingRad: number;
  readonly shape: TableShape;
  /** With the slope of its bed as seen from the break end, not along the shot. */
  readonly kit: Kit;
  /** Null: the cue ball may rest anywhere. */
  readonly zone: RestZone | null;
}

/** The balls in the order in which a scene is played: cue ball, object ball, all others. */
export function ballsOf({ position, goal }: Scene): readonly NamedBall[] {
  const [cueBall, ball] = [ballNamed(position, 'cue'), ballNamed(position, goal.ball)];
  if (cueBall === null || ball === null) return [];
  return [cueBall, ball, ...without(position, 'cue', goal.ball)];
}

/** A stroke played out on the whole table; null where the engine cannot take it. */
export function playOn(scene: Scene, stroke: Stroke, options: TableOptions = {}): TablePlay | null {
  const { shape, kit, headingRad } = scene;
  const overTable = { ...stroke, aimRad: headingRad + stroke.aimRad };
  const play = playTable(ballsOf(scene), overTable, kit, shape, options);
  return play.ok ? play : null;
}

/** Whether the object ball of a play fell where it was meant to. */
export function didGo({ balls }: TablePlay, { goal }: Scene): boolean {
  const outcome = balls[1]?.outcome;
  return outcome?.kind === 'pocketed' && outcome.pocket === goal.pocket;
}

/** Whether the cue ball of a play was pocketed or left the table. */
export function didScratch({ balls }: TablePlay): boolean {
  const kind = balls[0]?.outcome.kind;
  return kind === 'pocketed' || kind === 'off-table';
}
