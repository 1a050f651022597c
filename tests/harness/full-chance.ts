import { directCut, directGoal } from '../../src/engine/goal/goal';
import { shotFrom } from '../../src/engine/goal/shot-from-position';
import { kitAlong } from '../../src/engine/kit/kit-along';
import { byChance } from '../../src/engine/plan/distinct-ways';
import { placesOf } from '../../src/engine/plan/option-grid';
import { type Option, questionOf } from '../../src/engine/plan/solve-option';
import { sweepOpen } from '../../src/engine/plan/sweep-open';
import type { PocketName } from '../../src/engine/table/pocket-shape';
import { drawnWay } from '../../src/engine/ways/drawn-chance';
import { strokeAt } from '../../src/engine/ways/scan';
import { askedFor, type WaysQuestion } from '../../src/engine/ways/ways-question';

/** The strokes that are compared: no side and side either way, high, low and in the middle, four speeds. */
const SIDES = [0, -0.25, 0.25];
const HEIGHTS = [0, 0.3, -0.3];
const SPEEDS_MPS = [0.9, 1.4, 2.1, 3.1];
/** A stroke that goes seldomer by straight lines is not played. */
const SELDOM = 0.01;

/**
 * How often the best direct pot of a position goes: of each ball that may be hit first and each pocket the
 * stroke that does best by straight lines, drawn and played on the whole table.
 */
export function fullChance(question: WaysQuestion): number {
  const { first, falls } = askedFor(question);
  const balls = first.filter((ball) => falls.includes(ball));
  const chances = balls.flatMap((ball) =>
    question.shape.pockets.map(({ name }) => chanceAt(question, ball, name)),
  );
  return Math.max(0, ...chances);
}

function chanceAt(question: WaysQuestion, ball: number, pocket: PocketName): number {
  const { position, shape, kit, spread, profile } = question;
  const goal = directCut(ball, pocket);
  const shot = shotFrom(position, goal, shape, kit);
  if (!shot.ok) return 0;
  const { headingRad } = shot;
  const asked = {
    question: questionOf(shot, kitAlong(kit, headingRad), spread, profile),
    scene: { position, goal, headingRad, shape, kit, zone: null },
  };
  const options = HEIGHTS.flatMap((height): readonly Option[] => {
    const base = { side: 0, height, speedMps: 1 };
    const { elevationRad } = strokeAt(askedFor(question), base, headingRad);
    const grid = {
      sides: SIDES,
      heights: [height],
      speedsMps: SPEEDS_MPS,
      elevationsRad: [elevationRad],
    };
    return sweepOpen(asked, grid, { from: 0, to: placesOf(grid) });
  });
  const [best] = options.sort(byChance);
  if (best === undefined || best.chance.share < SELDOM) return 0;
  const way = { goal: directGoal(ball, pocket), headingRad, stroke: best.stroke };
  return drawnWay(question, way, 0).chance;
}
