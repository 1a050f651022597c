import { strokeOf } from '../../engine/direct/shot';
import { checkTarget } from '../../engine/goal/check-target';
import type { Pot } from '../../engine/goal/goal';
import type { PositionShot } from '../../engine/goal/position-shot';
import type { Target } from '../../engine/goal/target';
import type { KitSpread } from '../../engine/kit/kit-spread';
import type { NamedBall } from '../../engine/lie/position';
import { wrapped } from '../../engine/numerics/angle';
import type { RankQuestion } from '../../engine/plan/refine-way';
import type { Option } from '../../engine/plan/solve-option';
import type { LevelShot } from '../../engine/player/level-test';
import type { Stroke } from '../../engine/stroke/stroke';
import type { TableShape } from '../../engine/table/table-shape';
import type { PlayedPosition } from '../../store/player';
import { shotOfWay } from '../choose/send-to-shot';
import { liesSo } from '../lies-so';
import type { ToLog, WhatBecame } from '../player/played-edits';
import type { Answered } from '../shot-answers';

/** A shot as it was asked, before anything became of it. */
export type ShotToLog = Omit<ToLog, keyof WhatBecame | 'testId' | 'drill'>;

/** Where balls lie, and what is meant there. */
export interface Laid {
  readonly shape: Pick<TableShape, 'lengthM' | 'widthM'>;
  readonly balls: readonly NamedBall[];
  readonly goal: Pot;
  /** What the position makes, as far as it tells whether a shot is that of this position. */
  readonly shot: Pick<PositionShot, 'distanceM' | 'cutRad' | 'headingRad'>;
}

/**
 * What the place Shot asks; null where it cannot be learnt from.
 *
 * @param laid what lies on the table of Choose: it is kept too where the shot came from there
 */
export function askedOnShot(
  { shot, kit, answer }: Answered,
  target: Target,
  spread: KitSpread,
  laid: Laid | null,
): ShotToLog | null {
  if (checkTarget(target, kit.ballRadiusM) !== null) return null;
  const { distanceM, cutRad } = shot;
  const { aimRad } = answer;
  const stroke = strokeOf(shot, aimRad);
  const { aimRad: _aim, ...input } = stroke;
  const position = laid && liesSo(shot, laid.shot) ? laid : null;
  return {
    shot: { distanceM, cutRad, ...input },
    aimRad,
    target,
    kit,
    spread,
    position: position && playedPosition(position, stroke, position.shot.headingRad),
  };
}

/**
 * A way that Choose found.
 *
 * @param spread how little is known of the kit along the shot, whoever plays
 */
export function askedByWay(asked: RankQuestion, option: Option, spread: KitSpread): ShotToLog {
  const { shape, position: balls, goal, headingRad } = asked.scene;
  const { stroke } = option;
  return {
    ...shotOfWay(asked, option, spread),
    aimRad: stroke.aimRad,
    position: playedPosition({ shape, balls, goal }, stroke, headingRad),
  };
}

/** A shot of the level test, or of a ladder, on its table. */
export function askedInTest(level: LevelShot, shape: Laid['shape']): ShotToLog {
  const { shot, target, kit, spread, position: balls, goal, headingRad, line } = level;
  const stroke = strokeOf(shot, line.solvedRad);
  return {
    shot,
    aimRad: line.solvedRad,
    target,
    kit,
    spread,
    position: playedPosition({ shape, balls, goal }, stroke, headingRad),
  };
}

export function playedPosition(
  { shape, balls, goal }: Pick<Laid, 'shape' | 'balls' | 'goal'>,
  stroke: Stroke,
  headingRad: number,
): PlayedPosition {
  const { lengthM, widthM } = shape;
  const over = { ...stroke, aimRad: wrapped(headingRad + stroke.aimRad) };
  return { lengthM, widthM, balls, goal, stroke: over };
}
