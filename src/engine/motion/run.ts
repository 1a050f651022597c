import { type BallState, padOf } from '../ball/ball-state';
import type { Kit } from '../kit/kit';
import { fillNext } from './next-phase';
import { fillEnd, newPhase, type Phase } from './phase';

/**
 * More than any run has: the longest chain of hops that the accepted ranges allow, a massé at full
 * speed on a bed that returns 0.95 of every landing, has some 320.
 */
export const MOST_PHASES = 400;

/**
 * A ball's run with nothing in its way, phase after phase. One pad holds them all: a phase is gone
 * once the next one is asked for.
 */
export class Run {
  readonly phase: Phase;
  private readonly pad;
  private ahead;
  private before;
  private count = 0;

  constructor(
    ball: BallState,
    private timeS: number,
    private readonly kit: Kit,
  ) {
    this.ahead = padOf(ball);
    this.before = padOf(ball);
    this.pad = newPhase(this.before);
    this.phase = this.pad;
  }

  /** Goes on to the next phase; false where the ball lies still, or the run is given up. */
  next(): boolean {
    if (this.count > 0) {
      fillEnd(this.pad, this.ahead);
      this.timeS += this.pad.durationS;
    }
    if (this.isGivenUp || !fillNext(this.pad, this.ahead, this.timeS, this.kit)) return false;
    const begun = this.ahead;
    this.ahead = this.before;
    this.before = begun;
    this.count++;
    return true;
  }

  /** Whether there were too many phases to follow. */
  get isGivenUp(): boolean {
    return this.count >= MOST_PHASES;
  }

  /** How the ball is once there is no next phase: at rest, or where the run was given up. */
  get end(): BallState {
    return this.ahead;
  }
}

/** How a ball with nothing in its way comes to rest. */
export function endOfRun(ball: BallState, kit: Kit): BallState {
  const run = new Run(ball, 0, kit);
  while (run.next());
  return run.end;
}
