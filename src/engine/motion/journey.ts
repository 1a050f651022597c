import type { BallState } from '../ball/ball-state';
import type { Kit } from '../kit/kit';
import { nextPhase } from './next-phase';
import type { Obstacle } from './obstacle';
import { endState, type Phase, stateAt } from './phase';
import { MOST_PHASES, type Run, type Watch } from './run';

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
  while (phases.length < MOST_PHASES) {
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

/**
 * Goes on with a run until an obstacle is met, and keeps nothing of what came before.
 *
 * @returns when in the run's phase it is met, s since that began; null where the ball comes to rest
 *   or the run is given up
 */
export function runTo(run: Run, obstacle: Obstacle & Watch): number | null {
  while (run.next(obstacle)) {
    const timeS = obstacle.touchTime(run.phase);
    if (timeS < Number.POSITIVE_INFINITY) return timeS;
  }
  return null;
}
