import type { BallState } from '../ball/ball-state';
import type { PlayedGoal } from '../goal/goal';
import { type Heading, headingAt, mouthArrival } from '../goal/last-leg';
import { lastLeg } from '../goal/played-out';
import type { Lost } from '../goal/task';
import { Run } from '../motion/run';
import type { BaseStroke } from './base-strokes';
import type { Bracket } from './brackets';
import { strokeAt } from './scan';
import type { WaysAsked } from './ways-question';

/** A direction of the cue at which a ball comes to the middle of a pocket; or why there is none. */
export type Solved =
  | {
      readonly headingRad: number;
      /** Of the miss, as a share of what is open, per rad that the cue turns. */
      readonly missPerRad: number;
    }
  | { readonly lost: Lost };

/** As a share of half of what is open: nearer than this is the middle. */
const NEAR = 0.1;
const MOST_LOOKS = 14;
const MOST_STEPS = 5;

interface Look {
  readonly headingRad: number;
  readonly ball: BallState;
  readonly heading: Heading;
}

/**
 * Closes in on the direction of the cue at which a ball crosses the middle of what is open to it. By
 * where the ball heads as it sets off first, which is there to be seen however far off it is; then by
 * where it crosses the mouth, curve and all.
 */
export function solveHeading(
  asked: WaysAsked,
  base: BaseStroke,
  goal: PlayedGoal,
  bracket: Bracket,
): Solved {
  const lookAt = lookerFor(asked, base, goal);
  const found = closeIn(lookAt, bracket);
  if (typeof found.look === 'string') return { lost: found.look };
  return cross(lookAt, found.look, found.slope / found.look.heading.open.halfAngleRad, asked);
}

/** The same from a direction near by, at which a stroke much like this one goes. */
export function solveNear(
  asked: WaysAsked,
  base: BaseStroke,
  goal: PlayedGoal,
  headingRad: number,
  missPerRad: number,
): Solved {
  const lookAt = lookerFor(asked, base, goal);
  const look = lookAt(headingRad);
  return typeof look === 'string' ? { lost: look } : cross(lookAt, look, missPerRad, asked);
}

/** Plays a stroke until its ball sets off on its last leg, and sees where that heads. */
function lookerFor(asked: WaysAsked, base: BaseStroke, goal: PlayedGoal): LookAt {
  const { laid, question } = asked;
  const { shape, kit } = question;
  const pocket = shape.pockets.find(({ name }) => name === goal.pocket);
  return (headingRad) => {
    const ball = lastLeg({ laid, goal }, strokeAt(asked, base, headingRad), kit, false);
    if (typeof ball === 'string') return ball;
    const heading = pocket === undefined ? null : headingAt(ball, pocket, shape, kit);
    return heading === null ? 'other-way' : { headingRad, ball, heading };
  };
}

type LookAt = (headingRad: number) => Look | Lost;

/** Between the two ends: by the straight line between them, and by halves where that is slow. */
function closeIn(lookAt: LookAt, bracket: Bracket): { look: Look | Lost; slope: number } {
  let [low, lowOff, high, highOff] = [
    bracket.lowRad,
    bracket.lowOffRad,
    bracket.highRad,
    bracket.highOffRad,
  ];
  for (let count = 0; count < MOST_LOOKS; count++) {
    const share = count % 3 === 2 ? 0.5 : lowOff / (lowOff - highOff);
    const at = low + Math.min(0.95, Math.max(0.05, share)) * (high - low);
    const look = lookAt(at);
    if (typeof look === 'string') return { look, slope: 0 };
    const { offRad, open } = look.heading;
    const slope = (highOff - lowOff) / (high - low);
    if (Math.abs(offRad) < NEAR * open.halfAngleRad * 5) return { look, slope };
    if (offRad > 0 === lowOff > 0) [low, lowOff] = [at, offRad];
    else [high, highOff] = [at, offRad];
  }
  return { look: 'other-way', slope: 0 };
}

/** Secant steps on where the ball crosses the mouth. */
function cross(lookAt: LookAt, start: Look, missPerRad: number, { question }: WaysAsked): Solved {
  const run = new Run();
  let look = start;
  let slope = missPerRad;
  let before: { headingRad: number; miss: number } | null = null;
  for (let count = 0; count < MOST_STEPS; count++) {
    const arrival = mouthArrival(look.ball, look.heading, question.kit, run);
    if (arrival === null) return { lost: 'short' };
    const { miss } = arrival;
    const { headingRad } = look;
    if (Math.abs(miss) < NEAR) return { headingRad, missPerRad: slope };
    if (before !== null && before.headingRad !== headingRad && before.miss !== miss) {
      slope = (miss - before.miss) / (headingRad - before.headingRad);
    }
    before = { headingRad, miss };
    const next = lookAt(headingRad - miss / slope);
    if (typeof next === 'string') return { lost: next };
    look = next;
  }
  return { lost: 'other-way' };
}
