import type { Kit } from '../kit/kit';
import { ballNamed, without } from '../lie/balls-of';
import type { NamedBall, Position } from '../lie/position';
import { playTable } from '../table/play-table';
import type { TablePlay } from '../table/table-play';
import type { TableShape } from '../table/table-shape';
import type { Intent } from './goal';
import type { StrokeInputs } from './held-shot';

/** A round patch of the bed in which the cue ball would do well, m. */
export interface RestZone {
  readonly xM: number;
  readonly yM: number;
  readonly radiusM: number;
}

/** The whole table on which a way is played out, in its own frame. */
export interface TableScene {
  readonly position: Position;
  readonly intent: Intent;
  /** Of the straight line over the table, as in a shot from a position, rad. */
  readonly headingRad: number;
  readonly shape: TableShape;
  /** With the slope of its bed as seen from the break end, not along the shot. */
  readonly kit: Kit;
  /** Null: the cue ball may rest anywhere. */
  readonly zone: RestZone | null;
}

/** The balls in the order in which a scene is played: cue ball, object ball, all others. */
export function ballsOf({ position, intent }: TableScene): readonly NamedBall[] {
  const [cueBall, ball] = [ballNamed(position, 'cue'), ballNamed(position, intent.ball)];
  if (cueBall === null || ball === null) return [];
  return [cueBall, ball, ...without(position, 'cue', intent.ball)];
}

/** A stroke played out on the whole table; null where the engine cannot take it. */
export function playOn(scene: TableScene, inputs: StrokeInputs): TablePlay | null {
  const { shape, kit, headingRad } = scene;
  const stroke = { ...inputs, aimRad: headingRad + inputs.aimRad };
  const play = playTable(ballsOf(scene), stroke, kit, shape);
  return play.ok ? play : null;
}

/** Whether the object ball of a play fell where it was meant to. */
export function didGo({ balls }: TablePlay, { intent }: TableScene): boolean {
  const outcome = balls[1]?.outcome;
  return outcome?.kind === 'pocketed' && outcome.pocket === intent.pocket;
}

/** Whether the cue ball of a play was pocketed or left the table. */
export function didScratch({ balls }: TablePlay): boolean {
  const kind = balls[0]?.outcome.kind;
  return kind === 'pocketed' || kind === 'off-table';
}
