import { pointsBeside } from '../goal/open-way';
import type { Kit } from '../kit/kit';
import { ballNamed, placeOf, without } from '../lie/balls-of';
import { leastElevation } from '../lie/least-elevation';
import type { NamedBall, Position } from '../lie/position';
import type { StrokeProfile } from '../room/stroke-profile';
import type { PocketName } from '../table/pocket-shape';
import type { TableShape } from '../table/table-shape';
import { between } from './between';
import { type LineScatter, lineScatters } from './line-scatter';
import { type PotShot, potChance } from './pot-chance';
import { areAlongRail, type Bed, type PocketMouth, potLine } from './pot-line';

/** Who plays on what, with what. */
export interface EaseQuestion {
  readonly shape: TableShape;
  readonly kit: Kit;
  readonly profile: StrokeProfile;
}

/** The best ball and pocket of a layout, and how likely the player pots it. */
export interface Easiest {
  readonly ball: number;
  readonly pocket: PocketName;
  /** 0 to 1. */
  readonly chance: number;
}

/**
 * How easy layouts are for a player, in closed form: of every ball that may be hit first, at every
 * pocket, how likely a plain direct cut goes. What stands in the way, the cushion behind the cue ball,
 * cut and distance, what is open of the pocket, squirt, swerve and throw are in it. It takes tens of
 * microseconds. How near it comes to the chance of strokes played on the whole table, and where from
 * its constants are: `tests/property/ease` and `pot-chance`.
 */
export class Ease {
  readonly bed: Bed;
  readonly mouths: readonly PocketMouth[];
  private readonly scatters: readonly LineScatter[];

  constructor({ shape, kit, profile }: EaseQuestion) {
    this.bed = { shape, kit };
    this.mouths = shape.pockets.map((pocket) => ({ pocket, points: pointsBeside(pocket, shape) }));
    this.scatters = lineScatters(profile, kit);
  }

  /**
   * The easiest pot of a layout; null where there is no straight way at all.
   *
   * @param first the balls that may be hit first and may fall
   */
  easiest(position: Position, first: readonly number[]): Easiest | null {
    const cueBall = ballNamed(position, 'cue');
    if (cueBall === null) return null;
    let best: Easiest | null = null;
    for (const ball of position) {
      if (ball.name === 'cue' || !first.includes(ball.name)) continue;
      for (const mouth of this.mouths) {
        const chance = this.chanceOf(cueBall, ball, position, mouth);
        if (chance > (best?.chance ?? 0)) {
          best = { ball: ball.name, pocket: mouth.pocket.name, chance };
        }
      }
    }
    return best;
  }

  /** How likely one ball goes into one pocket; 0 where there is no straight way. */
  chanceOf(cueBall: NamedBall, ball: NamedBall, position: Position, mouth: PocketMouth): number {
    const shot = this.shotOf(cueBall, ball, position, mouth);
    if (shot === null) return 0;
    let sum = 0;
    for (const scatter of this.scatters) sum += potChance(shot, scatter, this.bed.kit);
    return sum / this.scatters.length;
  }

  private shotOf(
    cueBall: NamedBall,
    ball: NamedBall,
    position: Position,
    mouth: PocketMouth,
  ): PotShot | null {
    const { shape, kit } = this.bed;
    const line = potLine(cueBall, ball, mouth, this.bed);
    if (line === null) return null;
    const beside = between(cueBall, ball, position, line, kit);
    if (beside === null) return null;
    const others = without(position, 'cue');
    const least = leastElevation(placeOf(cueBall), line.headingRad, others, shape, kit);
    return {
      line,
      between: beside,
      elevationRad: least.elevationRad,
      isCorner: mouth.pocket.axis.y !== 0,
      isAlongRail: areAlongRail(cueBall, ball, line, this.bed),
    };
  }
}
