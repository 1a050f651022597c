import { type DirectGoal, directCut, directGoal } from '../goal/goal';
import type { PositionShot } from '../goal/position-shot';
import { shotFrom } from '../goal/shot-from-position';
import { kitAlong } from '../kit/kit-along';
import { distinctWays, type NamedOption } from '../plan/distinct-ways';
import { type OptionGrid, placesOf } from '../plan/option-grid';
import type { RankQuestion } from '../plan/refine-way';
import { type Option, questionOf, solveOption, taskOf } from '../plan/solve-option';
import { sweepOpen } from '../plan/sweep-open';
import { wayOf } from '../plan/way';
import type { PocketName } from '../table/pocket-shape';
import type { BaseStroke } from './base-strokes';
import { endsOf, type FoundWay, tried } from './found-way';
import { strokeAt } from './scan';
import type { StretchFound, WhyNoWay } from './stretch-found';
import { askedFor, type WaysAsked, type WaysQuestion } from './ways-question';

/** A coarse grid, for there are many balls and pockets. */
const SIDES = [0, -0.25, 0.25] as const;
const HEIGHTS = [0, 0.3, -0.3] as const;
const SPEEDS_MPS = [0.9, 1.4, 2.1, 3.1] as const;
/** How many of a ball and a pocket are worth working out. */
const MOST_OF_A_POCKET = 4;

/** The direct cuts of a ball into a pocket that really differ, on a coarse grid. */
export function directWays(question: WaysQuestion, ball: number, pocket: PocketName): StretchFound {
  const shot = shotFrom(question.position, directCut(ball, pocket), question.shape, question.kit);
  if (!shot.ok) return closedBy(shot.reason === 'too-thin' ? 'too-thin' : 'pocket-closed');
  const ranked = rankQuestion(question, ball, pocket, shot);
  const options = HEIGHTS.flatMap((height) => coarseOptions(question, ranked, height));
  if (options.length === 0) return closedBy(shot.inTheWay.length > 0 ? 'in-the-way' : 'short');
  const named = distinctWays(ranked.question, options, ranked.leastElevationRad);
  const asked = askedFor(question);
  const ways = named
    .slice(0, 2 * MOST_OF_A_POCKET)
    .flatMap((one) => directWay(asked, directGoal(ball, pocket), shot, one) ?? [])
    .slice(0, MOST_OF_A_POCKET);
  return ways.length > 0 ? { ways, failed: [] } : closedBy('other-way');
}

/** Of one height on the ball: a cue that strikes low has to be raised more over what is behind it. */
function coarseOptions(
  question: WaysQuestion,
  ranked: RankQuestion,
  height: number,
): readonly Option[] {
  const base = { side: 0, height, speedMps: 1 };
  const { elevationRad } = strokeAt(askedFor(question), base, ranked.scene.headingRad);
  const grid: OptionGrid = {
    sides: SIDES,
    heights: [height],
    speedsMps: SPEEDS_MPS,
    elevationsRad: [elevationRad],
  };
  return sweepOpen(ranked, grid, { from: 0, to: placesOf(grid) });
}

/** Null where, played with all balls, it does anything but what it says. */
function directWay(
  asked: WaysAsked,
  goal: DirectGoal,
  shot: PositionShot,
  { option, way }: NamedOption,
): FoundWay | null {
  const { headingRad } = shot;
  const { stroke, chance } = option;
  const played = tried(asked, goal, { ...stroke, aimRad: headingRad + stroke.aimRad });
  if (!played?.did || !played.isLegal) return null;
  const ends = endsOf(asked, played.play);
  const rough = chance.share;
  const missPerRad = Number.NaN;
  return { goal, headingRad, stroke, rough, missPerRad, way, doubleKiss: false, shot, ends };
}

/** The same cut by another stroke; null where that does not do it. */
export function directBeside(
  asked: WaysAsked,
  { goal, shot }: FoundWay,
  base: BaseStroke,
): FoundWay | null {
  if (shot === null || goal.kind !== 'direct') return null;
  const { kit, spread, profile } = asked.question;
  const question = questionOf(shot, kitAlong(kit, shot.headingRad), spread, profile);
  const { elevationRad } = strokeAt(asked, base, shot.headingRad);
  const option = solveOption(question, taskOf(question), { ...base, elevationRad }, 0);
  if (option === null) return null;
  const way = wayOf(question, option.stroke, shot.least.elevationRad);
  return directWay(asked, goal, shot, { option, way });
}

function closedBy(why: WhyNoWay): StretchFound {
  return { ways: [], failed: [{ kind: 'direct', why, times: 1 }] };
}

/** What a direct way is to do, and the kit as its shot sees it. */
export function directPotOf({ kit, spread, profile }: WaysQuestion, shot: PositionShot) {
  const asked = questionOf(shot, kitAlong(kit, shot.headingRad), spread, profile);
  return { task: taskOf(asked), kit: asked.kit };
}

function rankQuestion(
  question: WaysQuestion,
  ball: number,
  pocket: PocketName,
  shot: PositionShot,
): RankQuestion {
  const { position, shape, kit, spread, profile, zone } = question;
  const { headingRad, least } = shot;
  return {
    question: questionOf(shot, kitAlong(kit, headingRad), spread, profile),
    scene: { position, goal: directCut(ball, pocket), headingRad, shape, kit, zone },
    leastElevationRad: least.elevationRad,
  };
}
