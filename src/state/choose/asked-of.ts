import type { KitKnowledge } from '../../engine/fit/kit-knowledge';
import type { PositionShot } from '../../engine/goal/position-shot';
import type { PocketsQuestion } from '../../engine/plan/pocket-chances';
import type { RankQuestion } from '../../engine/plan/refine-way';
import { questionOf } from '../../engine/plan/solve-option';
import type { KnownPlayer } from '../../engine/player/player-report';
import type { StrokeProfile } from '../../engine/room/stroke-profile';
import type { TableShape } from '../../engine/table/table-shape';
import type { Table } from '../../store/records';
import { isSame } from '../../store/same-value';
import type { SavedPosition } from '../../store/saved-position';
import { knownAlongShot } from '../measure/known-along-shot';
import { chanceSpread } from '../player/learn-player';
import { goalOf } from './position-shot';

/** What a comparison hangs on. */
export interface AskedFrom {
  /** As it lies on the table. */
  readonly position: SavedPosition;
  readonly shot: PositionShot;
  readonly shape: TableShape;
  readonly table: Table;
  readonly knowledge: KitKnowledge;
  readonly profile: StrokeProfile;
  /** What is learnt of who plays; null where nothing is. */
  readonly player: KnownPlayer | null;
}

/**
 * What the engine is asked: the shot with the kit as seen along its straight line, and the whole
 * table with the kit as seen from the break end. Null while nothing is to be played.
 */
export function askedOf(from: AskedFrom): RankQuestion | null {
  const { position, shot, shape, table, knowledge, profile, player } = from;
  const goal = goalOf(position);
  if (goal === null) return null;
  const { headingRad, least } = shot;
  const known = knownAlongShot(knowledge, table.bedSlope, headingRad);
  const { kit, spread, correlation } = known;
  const { balls, zone } = position;
  return {
    question: questionOf(shot, kit, chanceSpread(player, spread), profile),
    scene: { position: balls, goal, headingRad, shape, kit: knowledge.kit, zone },
    correlation,
    leastElevationRad: least.elevationRad,
  };
}

/** What is asked of every pocket for the ball to be played; null while there is none. */
export function askedOfPockets(from: Omit<AskedFrom, 'shot' | 'table'>): PocketsQuestion | null {
  const { position, shape, knowledge, profile, player } = from;
  const { balls, goal } = position;
  const { ball } = goal;
  if (ball === null) return null;
  const { kit, spread } = knowledge;
  const { pocket: _, ...way } = goal;
  return {
    position: balls,
    goal: { ...way, ball },
    shape,
    kit,
    spread: chanceSpread(player, spread),
    profile,
  };
}

/** Whether a stroke does the same in both, whoever plays it. */
export function isSameShot(one: RankQuestion | null, other: RankQuestion): boolean {
  return (
    one !== null && isSame(one.scene, other.scene) && isSame(one.question.kit, other.question.kit)
  );
}
