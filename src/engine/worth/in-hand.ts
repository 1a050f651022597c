import { openBetween } from '../goal/open-way';
import { touchingM } from '../lie/clearances';
import { isLegal } from '../lie/legal-place';
import type { NamedBall, Position } from '../lie/position';
import { RAD_PER_DEG } from '../numerics/angle';
import type { Ease } from './ease';
import type { PocketMouth } from './pot-line';

/** Who has the cue ball in hand looks at so many pots, the widest open first. */
const POTS = 4;
/** From where the cue ball meets the ball: so far off, and so far beside the straight line. */
const AWAY_M = 0.3;
const ASIDE_RAD = [0, 30 * RAD_PER_DEG, -30 * RAD_PER_DEG] as const;

interface OpenPot {
  readonly ball: NamedBall;
  readonly mouth: PocketMouth;
  readonly alongRad: number;
  readonly widthRad: number;
}

/** Where the cue ball is best put down, and how likely its pot is from there. */
export interface InHand {
  readonly cueBall: NamedBall;
  readonly chance: number;
}

/**
 * The best place for who has the cue ball in hand, of twelve: three for each of the four pots that are open
 * widest. Null where none of them leaves a pot.
 *
 * @param position without a cue ball
 * @param first the balls that may be hit first and may fall
 */
export function bestInHand(
  ease: Ease,
  position: Position,
  first: readonly number[],
): InHand | null {
  const { shape, kit } = ease.bed;
  const widthM = 2 * kit.ballRadiusM;
  let best: InHand | null = null;
  for (const { ball, mouth, alongRad } of openPots(ease, position, first)) {
    for (const asideRad of ASIDE_RAD) {
      const fromRad = alongRad + asideRad;
      const xM = ball.xM - widthM * Math.sin(alongRad) - AWAY_M * Math.sin(fromRad);
      const yM = ball.yM - widthM * Math.cos(alongRad) - AWAY_M * Math.cos(fromRad);
      if (!isLegal({ xM, yM }, position, shape, kit)) continue;
      const cueBall: NamedBall = { name: 'cue', xM, yM };
      const chance = ease.chanceOf(cueBall, ball, [cueBall, ...position], mouth);
      if (chance > (best?.chance ?? 0)) best = { cueBall, chance };
    }
  }
  return best;
}

function openPots(ease: Ease, position: Position, first: readonly number[]): readonly OpenPot[] {
  const reachM = touchingM(ease.bed.kit);
  return position
    .filter(({ name }) => name !== 'cue' && first.includes(name))
    .flatMap((ball) =>
      ease.mouths.flatMap((mouth): OpenPot[] => {
        const { pocket, points } = mouth;
        const open = openBetween({ x: ball.xM, y: ball.yM }, pocket, points, reachM);
        return open === null
          ? []
          : [{ ball, mouth, alongRad: open.alongRad, widthRad: open.halfAngleRad }];
      }),
    )
    .sort((a, b) => b.widthRad - a.widthRad)
    .slice(0, POTS);
}
