import type { Pot } from '../goal/goal';
import type { PositionShot } from '../goal/position-shot';
import type { Scene } from '../goal/scene';
import { type FindWay, shotFrom } from '../goal/shot-from-position';
import type { Kit } from '../kit/kit';
import { kitAlong } from '../kit/kit-along';
import type { KitSpread } from '../kit/kit-spread';
import type { BallName, Position } from '../lie/position';
import type { StrokeProfile } from '../room/stroke-profile';
import type { PocketName } from '../table/pocket-shape';
import type { TableShape } from '../table/table-shape';
import { pathCheck, pathInTheWay } from './path-in-the-way';
import { type Option, questionOf, solveOption, taskOf } from './solve-option';

/** A ball on a table, and who plays it with what. */
export interface PocketsQuestion {
  readonly position: Position;
  readonly goal: Omit<Pot, 'pocket'>;
  readonly shape: TableShape;
  /** Its bed as seen from the break end. */
  readonly kit: Kit;
  readonly spread: KitSpread;
  readonly profile: StrokeProfile;
}

/** Why a ball does not go into a pocket by a plain stroke. */
export type WhyNot =
  | { readonly reason: 'too-thin' | 'pocket-closed' | 'not-reached' }
  /** Left out: nobody knows by what. */
  | { readonly reason: 'in-the-way'; readonly what?: BallName | 'jaw' };

/** How often a ball goes into a pocket, about; or why it does not. */
export type PocketChance =
  | { readonly pocket: PocketName; readonly share: number }
  | { readonly pocket: PocketName; readonly share: null; readonly why: WhyNot };

/** The middles of medium, firm and power (common practice, no source): the first that gets there. */
const PLAIN_SPEEDS_MPS = [1.5, 2.5, 3.75] as const;

/**
 * The chance of every pocket for one ball, by straight lines, played plainly: no side, the middle of
 * the ball, as level as the position lets, at medium speed or the least above it that gets there.
 * Enough to choose a pocket by, and cheap: a pocket costs three aims at most. Empty where the
 * position itself makes no shot.
 *
 * @param findWay finds what of a pocket is open; by default by playing balls at it, milliseconds
 */
export function pocketChances(asked: PocketsQuestion, findWay?: FindWay): readonly PocketChance[] {
  const { position, goal, shape, kit } = asked;
  return shape.pockets.flatMap(({ name: pocket }): readonly PocketChance[] => {
    const shot = shotFrom(position, { ...goal, pocket }, shape, kit, findWay);
    if (shot.ok) return [{ pocket, ...plainChance(asked, pocket, shot) }];
    const { reason } = shot;
    return reason === 'too-thin' || reason === 'pocket-closed'
      ? [{ pocket, ...closedBy({ reason }) }]
      : [];
  });
}

type Told = { readonly share: number } | { readonly share: null; readonly why: WhyNot };

function closedBy(why: WhyNot): Told {
  return { share: null, why };
}

function plainChance(asked: PocketsQuestion, pocket: PocketName, shot: PositionShot): Told {
  const { position, goal, shape, kit, spread, profile } = asked;
  const { headingRad } = shot;
  const question = questionOf(shot, kitAlong(kit, headingRad), spread, profile);
  const option = plainOption(question, shot.least.elevationRad);
  if (option === null) return closedBy({ reason: 'not-reached' });
  const scene = {
    position,
    goal: { ...goal, pocket },
    headingRad,
    shape,
    kit,
    zone: null,
  };
  if (pathCheck({ question, scene })(option)) return { share: option.chance.share };
  const what = obstacle(shot, scene, option);
  return closedBy({ reason: 'in-the-way', ...(what === undefined ? {} : { what }) });
}

function plainOption(question: ReturnType<typeof questionOf>, elevationRad: number): Option | null {
  const task = taskOf(question);
  for (const [place, speedMps] of PLAIN_SPEEDS_MPS.entries()) {
    const option = solveOption(
      question,
      task,
      { side: 0, height: 0, elevationRad, speedMps },
      place,
    );
    if (option !== null) return option;
  }
  return null;
}

/** On the straight lines; else where the path really bends to. */
function obstacle({ inTheWay }: PositionShot, scene: Scene, option: Option) {
  const [first] = inTheWay.length > 0 ? inTheWay : pathInTheWay(scene, option);
  return first?.what;
}
