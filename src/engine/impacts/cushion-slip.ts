import { SURFACE_RESPONSE } from '../ball/inertia';

/** Increments are shares of the impulse that a plain impact takes: at least this … */
const LEAST_SHARE = 1 / 512;
/** … where a slip turns fast; and this where one begins. */
const FIRST_SHARE = 1 / 128;
/** A slip that would end within such a share ends in one increment. */
const LAST_SHARE = 1 / 128;
/** An increment turns a slip by this at most, rad, … */
const TURN_RAD = 1 / 5;
/** … takes at most this share of it away, and friction alone would take at most this. */
const SHRINK = 1 / 2;
const RUB = 3 / 5;
/** A slip of at most this share of the closing speed of first touch is none. */
export const NONE = 1e-10;

/**
 * How a ball slips over what it touches at one point, and the friction there. The nose's impulse
 * takes the place of time: rates are per impulse. All is along the rail, and across: up the ball's
 * face at the nose, into the rail on the bed.
 */
export class Slip {
  /** m/s. */
  along = 0;
  across = 0;
  /** What friction gives, per impulse. */
  rubAlong = 0;
  rubAcross = 0;
  /** What all there is changes the slip by, per impulse. */
  changeAlong = 0;
  changeAcross = 0;
  /** How hard the ball is pressed there, per impulse. */
  pressed = 1;
  /** What a unit of friction changes the slip across by; along it is {@link SURFACE_RESPONSE}. */
  giveAcross = SURFACE_RESPONSE;
  private readonly noneMps: number;

  /**
   * @param friction coefficient of it
   * @param wholeMps the impulse of a plain impact
   */
  constructor(
    readonly friction: number,
    private readonly wholeMps: number,
  ) {
    this.noneMps = NONE * wholeMps;
  }

  /** Whether there is no slip, or next to none. */
  get hasEnded(): boolean {
    const { along, across, noneMps } = this;
    return along * along + across * across <= noneMps * noneMps;
  }

  /** What friction can give at most, per impulse. */
  get most(): number {
    return this.friction * this.pressed;
  }

  rubNone(): void {
    this.rubAlong = 0;
    this.rubAcross = 0;
  }

  /** Friction against the slip, as hard as it can be. */
  rubAgainst(): void {
    const { along, across } = this;
    const against = -this.most / Math.sqrt(along * along + across * across);
    this.rubAlong = against * along;
    this.rubAcross = against * across;
  }

  /** The largest increment, m/s, of those no larger than `within`, in which the slip hardly turns. */
  smoothWithin(within: number): number {
    const { along, across, changeAlong, changeAcross, wholeMps } = this;
    const square = along * along + across * across;
    if (this.hasEnded) {
      const begins = Math.abs(changeAlong) + Math.abs(changeAcross) > NONE;
      return begins ? Math.min(within, FIRST_SHARE * wholeMps) : within;
    }
    const slip = Math.sqrt(square);
    const rub = SURFACE_RESPONSE * this.most;
    const turning = Math.abs(along * changeAcross - across * changeAlong);
    const shrinking = -(along * changeAlong + across * changeAcross);
    let smooth = rub * within > RUB * slip ? (RUB * slip) / rub : within;
    if (turning * smooth > TURN_RAD * square) smooth = (TURN_RAD * square) / turning;
    if (shrinking * smooth > SHRINK * square) smooth = (SHRINK * square) / shrinking;
    return Math.min(within, Math.max(LEAST_SHARE * wholeMps, smooth));
  }

  /**
   * Turns friction into what ends the slip, where an increment no larger than `within` does: how much
   * that takes is known, however the slip turns meanwhile.
   *
   * @returns the increment, m/s; Infinity where there is none, and friction is as it was
   */
  endWithin(within: number): number {
    const { along, across, changeAlong, changeAcross, giveAcross } = this;
    const longest = Math.min(within, LAST_SHARE * this.wholeMps);
    const shrinking = -(along * changeAlong + across * changeAcross);
    const isEnding = shrinking * longest > along * along + across * across;
    if (!isEnding) return Number.POSITIVE_INFINITY;
    // Friction of t times the most there is makes up for the slip, and for t times all else.
    const { most } = this;
    const a = along / SURFACE_RESPONSE;
    const b = across / giveAcross;
    const perA = changeAlong / SURFACE_RESPONSE - this.rubAlong;
    const perB = changeAcross / giveAcross - this.rubAcross;
    const spare = most * most - perA * perA - perB * perB;
    const both = a * perA + b * perB;
    const increment = (both + Math.sqrt(both * both + spare * (a * a + b * b))) / spare;
    if (!(spare > 0 && increment <= longest)) return Number.POSITIVE_INFINITY;
    this.rubAlong = -a / increment - perA;
    this.rubAcross = -b / increment - perB;
    return increment;
  }
}
