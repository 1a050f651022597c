import type { PlayedGoal } from '../goal/goal';
import { heldWithin } from '../numerics/range';
import { isBeyondMiscue } from '../stroke/miscue-limit';
import type { BaseStroke } from './base-strokes';
import { directBeside } from './direct-ways';
import { type FoundWay, foundBy, promiseOf } from './found-way';
import { strokeAt } from './scan';
import { solveNear } from './solve-heading';
import { askedFor, type WaysAsked, type WaysQuestion } from './ways-question';

/** Steps away from a stroke: harder and softer, and the tip a little elsewhere, in fractions of R. */
const FASTER = 1.18;
const TIP_STEP = 0.12;
/** The contact point keeps this share of the way to the miscue limit. */
const MARGIN = 0.92;
/** A ball that just gets there, to a break (common practice, no source). */
const SPEEDS_MPS = { min: 0.6, max: 5 };
const MOST_ROUNDS = 3;
/** Less than this is no gain worth another round. */
const GAIN = 0.01;

/**
 * The same way with a stroke near by that goes more often: step by step, as long as it does and players
 * would still call it by the same words.
 */
export function improved(question: WaysQuestion, way: FoundWay): FoundWay {
  const asked = askedFor(question);
  let best = way;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const before = best;
    for (const base of besides(best)) {
      const other = alike(asked, best, base);
      if (other !== null && promiseOf(other) > promiseOf(best)) best = other;
    }
    if (promiseOf(best) < promiseOf(before) + GAIN) break;
  }
  return best;
}

function besides({ stroke, way: { isRaised } }: FoundWay): readonly BaseStroke[] {
  const { side, height, speedMps, elevationRad: raisedRad } = stroke;
  const moved: readonly BaseStroke[] = [
    { side, height, speedMps: speedMps * FASTER },
    { side, height, speedMps: speedMps / FASTER },
    { side, height: height + TIP_STEP, speedMps },
    { side, height: height - TIP_STEP, speedMps },
    { side: side + TIP_STEP, height, speedMps },
    { side: side - TIP_STEP, height, speedMps },
  ];
  return moved
    .map((base) => ({
      ...(isRaised ? { raisedRad } : {}),
      side: rounded(base.side),
      height: rounded(base.height),
      speedMps: heldWithin(SPEEDS_MPS, rounded(base.speedMps)),
    }))
    .filter((base) => !isBeyondMiscue(base.side / MARGIN, base.height / MARGIN));
}

/** To what a player can mean at all. */
function rounded(value: number): number {
  return Math.round(100 * value) / 100;
}

/** The same way by another stroke; null where it does not go, or is called otherwise. */
function alike(asked: WaysAsked, way: FoundWay, base: BaseStroke): FoundWay | null {
  const { goal } = way;
  const other =
    goal.kind === 'direct' ? directBeside(asked, way, base) : playedBeside(asked, goal, way, base);
  return other !== null && JSON.stringify(other.way) === JSON.stringify(way.way) ? other : null;
}

function playedBeside(
  asked: WaysAsked,
  goal: PlayedGoal,
  way: FoundWay,
  base: BaseStroke,
): FoundWay | null {
  const solved = solveNear(asked, base, goal, way.headingRad, way.missPerRad);
  if ('lost' in solved) return null;
  const { headingRad, missPerRad } = solved;
  const other = foundBy(asked, goal, strokeAt(asked, base, headingRad), missPerRad);
  return typeof other === 'object' ? other : null;
}
