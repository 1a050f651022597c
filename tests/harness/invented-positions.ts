import type { Pot } from '../../src/engine/goal/goal';
import type { PositionShot } from '../../src/engine/goal/position-shot';
import { shotFrom } from '../../src/engine/goal/shot-from-position';
import { DEFAULT_KIT } from '../../src/engine/kit/kit';
import { kitAlong } from '../../src/engine/kit/kit-along';
import { type KitSpread, UNMEASURED } from '../../src/engine/kit/kit-spread';
import type { NamedBall } from '../../src/engine/lie/position';
import { gridFrom } from '../../src/engine/plan/grid-from';
import { type OptionGrid, placesOf } from '../../src/engine/plan/option-grid';
import type { RankQuestion } from '../../src/engine/plan/refine-way';
import { type Option, questionOf } from '../../src/engine/plan/solve-option';
import { sweepOptions } from '../../src/engine/plan/sweep-options';
import { INVENTED_PROFILES } from '../../src/engine/room/stroke-profile';
import { WPA_POCKETS } from '../../src/engine/table/pocket-standard';
import { tableShape } from '../../src/engine/table/table-shape';
import { EXAMPLE_POSITIONS } from '../../src/store/example-positions';
import type { SavedPosition, Zone } from '../../src/store/saved-position';

/** What is not known of a kit on a table known to be level: tilted beds are slow to play. */
const LEVEL: KitSpread = { ...UNMEASURED, bedSlopeAlong: 0, bedSlopeRight: 0 };

export const NINE_FOOT = tableShape(2.54, 1.27, WPA_POCKETS);

/** A position ready to be compared: an invented club player, an ordinary kit, a level table. */
export interface AskedPosition {
  readonly name: string;
  readonly shot: PositionShot;
  readonly asked: RankQuestion;
}

export function askPosition(
  balls: readonly NamedBall[],
  goal: Pot,
  zone: Zone | null = null,
  name = '',
): AskedPosition {
  const shape = NINE_FOOT;
  const shot = shotFrom(balls, goal, shape, DEFAULT_KIT);
  if (!shot.ok) throw new Error(`${name}: ${shot.reason}`);
  const { headingRad, least } = shot;
  const profile = INVENTED_PROFILES.club;
  return {
    name,
    shot,
    asked: {
      question: questionOf(shot, kitAlong(DEFAULT_KIT, 0), LEVEL, profile),
      scene: { position: balls, goal, headingRad, shape, kit: DEFAULT_KIT, zone },
      leastElevationRad: least.elevationRad,
    },
  };
}

/** The ten invented positions that the app comes with. */
export function inventedPositions(): readonly AskedPosition[] {
  return EXAMPLE_POSITIONS.map(({ balls, goal, zone, name }: SavedPosition) => {
    const { ball, pocket } = goal;
    if (ball === null || pocket === null) throw new Error(`${name} says not what to play`);
    return askPosition(balls, { ...goal, ball, pocket }, zone, name);
  });
}

/** A position's options on every so manieth side and speed of its grid. */
export function someOptions({ asked, shot }: AskedPosition, every: number): readonly Option[] {
  const { position, shape, kit } = asked.scene;
  const grid = gridFrom(position, shot.headingRad, shape, kit);
  const middle = (grid.sides.length - 1) / 2;
  const thinned: OptionGrid = {
    ...grid,
    sides: grid.sides.filter((_, index) => (index - middle) % every === 0),
    speedsMps: grid.speedsMps.filter((_, index) => index % every === 0),
  };
  return sweepOptions(asked.question, thinned, { from: 0, to: placesOf(thinned) });
}
