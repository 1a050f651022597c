import type { BallState } from '../ball/ball-state';
import type { Kit } from '../kit/kit';
import { nextPhase } from './next-phase';
import type { Obstacle } from './obstacle';
import { endState, type Phase, stateAt } from './phase';

/** How a ball's run ends. */
export interface Journey {
  /** In order; the last one is cut short where an obstacle is met. */
  readonly phases: readonly Phase[];
  /** The obstacle met, or null where the ball comes to rest, or where the cap on phases is met. */
  readonly met: Obstacle | null;
  readonly end: BallState;
  readonly endS: number;
  /** False when the run was given up for having too many phases. */
  readonly complete: boolean;
}

/**
 * More than any run has: the longest chain of hops that the accepted ranges allow, a massé at full
 * speed on a bed that returns 0.95 of every landing, has some 320.
 */
const MAX_PHASES = 400;

/** Follows a ball from a state, event by event, until it meets an obstacle or rests. */
export function travel(
  ball: BallState,
  startS: number,
  kit: Kit,
  obstacles: readonly Obstacle[],
): Journey {
  const phases: Phase[] = [];
  let end = ball;
  let endS = startS;
  while (phases.length < MAX_PHASES) {
    const phase = nextPhase(end, endS, kit);
    if (phase === null) return { phases, met: null, end, endS, complete: true };
    const meeting = firstMeeting(phase, obstacles);
    if (meeting !== null) {
      phases.push({ ...phase, durationS: meeting.timeS });
      end = stateAt(phase, meeting.timeS);
      return { phases, met: meeting.with, end, endS: endS + meeting.timeS, complete: true };
    }
    phases.push(phase);
    end = endState(phase);
    endS += phase.durationS;
  }
  return { phases, met: null, end, endS, complete: false };
}

function firstMeeting(phase: Phase, obstacles: readonly Obstacle[]) {
  let first: { readonly timeS: number; readonly with: Obstacle } | null = null;
  for (const obstacle of obstacles) {
    const timeS = obstacle.touchTime(phase);
    if (timeS < (first?.timeS ?? Number.POSITIVE_INFINITY)) first = { timeS, with: obstacle };
  }
  return first;
}
