import type { BallName } from '../lie/position';
import type { TableEvent } from '../table/table-play';
import { railOf } from './chains';
import type { Step } from './goal';
import type { Lost } from './task';

/** Follows a play along an itinerary, event by event, until it is done or lost. */
export class Follower {
  /** How many of the steps have happened. */
  at = 0;
  /** When the last of them did, s. */
  atS = 0;
  lost: Lost | null = null;

  /** @param ball the one that is to fall */
  constructor(
    private readonly via: readonly Step[],
    private readonly ball: number,
    private readonly names: readonly BallName[],
  ) {}

  get isDone(): boolean {
    return this.at === this.via.length;
  }

  /** True where no more need be looked at. */
  take(event: TableEvent): boolean {
    if (this.isDone) return this.takeOnTheLastLeg(event);
    if (event.kind === 'lands' || event.kind === 'rolls') return false;
    const next = this.via[this.at];
    const one = this.names[event.ball] ?? 'cue';
    if (next !== undefined && this.isNext(event, one, next)) {
      this.at++;
      this.atS = event.timeS;
      return false;
    }
    this.lost = this.whyLost(event, one);
    return this.lost !== null;
  }

  private isNext(event: TableEvent, one: BallName, next: Step): boolean {
    if (event.kind === 'hits-ball') {
      const other = this.names[event.other];
      if ('cushion' in next) return false;
      return (one === next.by && other === next.ball) || (other === next.by && one === next.ball);
    }
    if (event.kind !== 'hits-cushion' || 'ball' in next || event.part !== 'nose') return false;
    return one === next.by && railOf(event.cushion) === next.cushion;
  }

  private whyLost(event: TableEvent, one: BallName): Lost | null {
    if (event.kind === 'hits-ball') {
      const other = this.names[event.other] ?? 'cue';
      return this.isAhead(one) || this.isAhead(other) ? this.meeting(one, other) : null;
    }
    if (!this.isAhead(one)) return null;
    if (event.kind !== 'rests') return 'other-way';
    const isMover = this.via[this.at]?.by === one;
    return isMover ? (one === 'cue' ? 'untouched' : 'short') : null;
  }

  /** What becomes of the ball once it is on its way to the pocket. */
  private takeOnTheLastLeg(event: TableEvent): boolean {
    const one = this.names[event.ball] ?? 'cue';
    if (event.kind === 'hits-ball') {
      const other = this.names[event.other] ?? 'cue';
      if (one !== this.ball && other !== this.ball) return false;
      this.lost = this.meeting(one, other);
      return true;
    }
    if (one !== this.ball || event.kind === 'lands' || event.kind === 'rolls') return false;
    if (event.kind === 'rests') this.lost = 'short';
    return true;
  }

  /** Whether a ball has a part in what is still to come. */
  private isAhead(name: BallName): boolean {
    if (name === this.ball) return true;
    return this.via
      .slice(this.at)
      .some((step) => step.by === name || ('ball' in step && step.ball === name));
  }

  private meeting(one: BallName, other: BallName): Lost {
    return this.isOfTheShot(one) && this.isOfTheShot(other) ? 'kiss' : 'other-ball';
  }

  private isOfTheShot(name: BallName): boolean {
    return name === 'cue' || this.via.some((step) => 'ball' in step && step.ball === name);
  }
}
