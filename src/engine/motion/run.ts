import { type BallState, copyBall, padOf, restingAt } from '../ball/ball-state';
import { STANDARD_GRAVITY as g } from '../ball/gravity';
import { meetBed } from '../impacts/bed-impulse';
import { DEFAULT_KIT, type Kit } from '../kit/kit';
import { length } from '../numerics/length';
import { playHopChain } from './hop-chain';
import { fillNext } from './next-phase';
import { fillEnd, newPhase, type Phase } from './phase';

/**
 * More than any run has: the longest chain of hops that the accepted ranges allow, a massé at full
 * speed on a bed that returns 0.95 of every landing, has some 320.
 */
export const MOST_PHASES = 400;

/** What a run is followed for. */
export interface Watch {
  /** How far a ball's centre may go from a place, m, seen from above, with nothing to see. */
  clearM(xM: number, yM: number, radiusM: number): number;
}

/** Where only the end is of interest. */
const NOTHING: Watch = { clearM: () => Number.POSITIVE_INFINITY };

/**
 * A ball's run with nothing in its way, phase after phase. One pad holds them all: a phase is gone
 * once the next one is asked for.
 */
export class Run {
  readonly phase: Phase;
  private readonly pad;
  private ahead = padOf(restingAt(0, 0));
  private before = padOf(restingAt(0, 0));
  private timeS = 0;
  private kit: Kit = DEFAULT_KIT;
  private count = 0;
  private isBegun = false;

  constructor() {
    this.pad = newPhase(this.before);
    this.phase = this.pad;
  }

  /** Puts a ball where its run begins; what was followed before is forgotten. */
  begin(ball: BallState, timeS: number, kit: Kit): void {
    copyBall(ball, this.ahead);
    this.timeS = timeS;
    this.kit = kit;
    this.count = 0;
    this.isBegun = false;
  }

  /**
   * Goes on to the next phase; false where the ball lies still, or the run is given up.
   *
   * @param watch hops in which it has nothing to see are left out; by default none are
   */
  next(watch: Watch | null = null): boolean {
    if (this.isBegun) {
      fillEnd(this.pad, this.ahead);
      this.timeS += this.pad.durationS;
    }
    this.isBegun = false;
    if (watch !== null) this.hopUnseen(watch);
    if (this.isGivenUp || !fillNext(this.pad, this.ahead, this.timeS, this.kit)) return false;
    const begun = this.ahead;
    this.ahead = this.before;
    this.before = begun;
    this.count++;
    this.isBegun = true;
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

  /** Plays hops off the bed while each ends before the ball can have come to anything to see. */
  private hopUnseen(watch: Watch): void {
    const { ahead, kit } = this;
    const freeX = g * kit.bedSlope.rightM_per_M;
    const freeY = g * kit.bedSlope.alongM_per_M;
    const freeSize = length(freeX, freeY);
    let clearM = Number.NaN;
    while (!this.isGivenUp) {
      meetBed(ahead, kit);
      const { zM, vx, vy, vz } = ahead;
      if (zM > 0 || !(vz > 0)) return;
      const durationS = (2 * vz) / g;
      const longestM = (length(vx, vy) + (freeSize * durationS) / 2) * durationS;
      if (!(longestM < clearM)) {
        clearM = watch.clearM(ahead.xM, ahead.yM, kit.ballRadiusM);
        const chainS = playHopChain(ahead, kit, clearM);
        this.timeS += chainS;
        if (chainS > 0) return;
      }
      if (!(longestM < clearM)) return;
      clearM -= longestM;
      ahead.xM += (vx + (freeX / 2) * durationS) * durationS;
      ahead.yM += (vy + (freeY / 2) * durationS) * durationS;
      ahead.vx = vx + freeX * durationS;
      ahead.vy = vy + freeY * durationS;
      ahead.vz = vz - g * durationS;
      this.timeS += durationS;
      this.count++;
    }
  }
}

/** The run of a ball, at its beginning. */
export function runOf(ball: BallState, timeS: number, kit: Kit): Run {
  const run = new Run();
  run.begin(ball, timeS, kit);
  return run;
}

/** How a ball with nothing in its way comes to rest. */
export function endOfRun(ball: BallState, kit: Kit): BallState {
  const run = runOf(ball, 0, kit);
  while (run.next(NOTHING));
  return run.end;
}
