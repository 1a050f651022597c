import type { BallState } from '../ball/ball-state';
import type { BallName } from '../lie/position';
import type { CushionName } from '../table/cushion-shape';
import type { BallRun, TableEvent } from '../table/table-play';
import type { Rail, Step } from './goal';

/** A ball set off by what happened before: from here it goes its own way. */
export interface Leg {
  /** Its place in the list of balls. */
  readonly ball: number;
  /** All that led to it, in order. */
  readonly via: readonly Step[];
  /** When it begins, s. */
  readonly startS: number;
}

/** Side cushions are two, of one rail. */
export function railOf(cushion: CushionName): Rail {
  if (cushion === 'near' || cushion === 'far') return cushion;
  return cushion === 'near-left' || cushion === 'far-left' ? 'left' : 'right';
}

/** More than any way that is looked for has. */
const MOST_STEPS = 5;

/** What has led to a ball's motion; `lost` where it is too much, or not to be told in steps. */
type Chain = readonly Step[] | 'still' | 'lost';

/**
 * Follows through a play which touches led to which ball's motion. Jaws are no step of their own, but
 * a ball that leaves one for anything but a hole is lost, and so is one that meets a cushion's point:
 * a hair decides where that goes.
 */
export class Chains {
  private readonly of: Chain[];
  private readonly jawed: boolean[];
  /** The ball that the cue ball touched first; null: none as yet. */
  firstHit: number | null = null;

  constructor(private readonly names: readonly BallName[]) {
    this.of = names.map((_, ball) => (ball === 0 ? [] : 'still'));
    this.jawed = names.map(() => false);
  }

  /** What led to a ball's motion; null where that cannot be told. */
  viaOf(ball: number): readonly Step[] | null {
    const chain = this.of[ball];
    return chain === undefined || typeof chain === 'string' ? null : chain;
  }

  /** Takes in what happens next, and tells the legs that begin with it. */
  take(event: TableEvent): readonly Leg[] {
    if (event.kind === 'hits-cushion') return this.offCushion(event);
    return event.kind === 'hits-ball' ? this.offBall(event) : [];
  }

  private offCushion(event: TableEvent & { readonly kind: 'hits-cushion' }): readonly Leg[] {
    const { ball, part, cushion, timeS } = event;
    if (part === 'jaw') {
      this.jawed[ball] = true;
      return [];
    }
    return this.step(
      ball,
      { cushion: railOf(cushion), by: this.nameOf(ball) },
      part !== 'nose',
      timeS,
    );
  }

  private offBall(event: TableEvent & { readonly kind: 'hits-ball' }): readonly Leg[] {
    const { timeS } = event;
    if (event.ball === 0) this.firstHit ??= event.other;
    const [still, moving] =
      this.of[event.ball] === 'still' ? [event.ball, event.other] : [event.other, event.ball];
    const hit = this.nameOf(still);
    const by = this.nameOf(moving);
    const before = this.viaOf(moving);
    if (this.of[still] !== 'still') return this.again(still, moving, timeS);
    if (before === null || hit === 'cue' || this.jawed[moving]) {
      this.of[still] = 'lost';
      this.of[moving] = 'lost';
      return [];
    }
    this.of[still] = before;
    const step = { ball: hit, by };
    return [...this.step(still, step, false, timeS), ...this.step(moving, step, false, timeS)];
  }

  /** Two that move meet: only the cue ball and what it struck may, and that one goes on. */
  private again(one: number, other: number, timeS: number): readonly Leg[] {
    const [cue, ball] = [Math.min(one, other), Math.max(one, other)];
    const name = this.nameOf(ball);
    const [first] = this.viaOf(ball) ?? [];
    this.of[cue] = 'lost';
    if (cue !== 0 || name === 'cue' || first === undefined || !('ball' in first)) {
      this.of[ball] = 'lost';
      return [];
    }
    return this.step(ball, { ball: name, by: 'cue' }, first.ball !== name, timeS);
  }

  private step(ball: number, step: Step, isLost: boolean, startS: number): readonly Leg[] {
    const via = this.viaOf(ball);
    if (via === null || isLost || this.jawed[ball] || via.length >= MOST_STEPS) {
      this.of[ball] = 'lost';
      return [];
    }
    const longer = [...via, step];
    this.of[ball] = longer;
    return [{ ball, via: longer, startS }];
  }

  private nameOf(ball: number): BallName {
    return this.names[ball] ?? 'cue';
  }
}

/** A ball as it sets off at a time (s); null where it then lies still, or its phases were not kept. */
export function stateFrom({ phases }: BallRun, startS: number): BallState | null {
  return phases.find((phase) => phase.startS >= startS)?.start ?? null;
}
