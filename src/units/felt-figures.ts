import { restingAt } from '../engine/ball/ball-state';
import { STANDARD_GRAVITY } from '../engine/ball/gravity';
import { kickOf, newKick } from '../engine/impacts/ball-on-ball';
import { squirtAngle } from '../engine/impacts/strike';
import type { Kit } from '../engine/kit/kit';
import { squareRebound } from './square-rebound';

/** What the figures are told of: a kit as it is played, on one table. */
export interface FeltSetting {
  readonly kit: Kit;
  readonly tipDiameterM: number;
  /** Nose to nose. */
  readonly tableLengthM: number;
}

/**
 * What a player can see of a kit without knowing its laws, SI.
 * - `squirt`: how far off the cue's line the ball is after a table length, m, at half a tip of side:
 *   the cue shifted by half the width of its tip.
 * - `pivot`: the bridge from which a cue turned to a little side still sends the ball along the line, m.
 * - `run`: how far a ball goes that rolls off at {@link MEDIUM_MPS}, no cushion in its way, m.
 * - `draw`: how far a ball struck half-way down at {@link FIRM_MPS} keeps its backspin, m.
 * - `throw`: how far a sliding ball at {@link SOFT_MPS} throws another on a quarter-ball hit, rad.
 * - `rebound`: the share of its speed with which a ball that rolls in squarely at
 *   {@link MEDIUM_MPS} rolls back.
 */
export type FeltName = 'squirt' | 'pivot' | 'run' | 'draw' | 'throw' | 'rebound';

/** In the middle of what players call by these words (`speed-bands`). */
export const SOFT_MPS = 0.75;
export const MEDIUM_MPS = 1.5;
export const FIRM_MPS = 2.5;

/** Sine of the cut of a quarter-ball hit: the ghost ball's centre three quarters of a ball aside. */
const QUARTER_BALL = 0.75;
/** How far below the centre the draw shot is struck, radii. */
const DRAW_LOW = 0.5;

export const FELT_FIGURES: { readonly [N in FeltName]: (setting: FeltSetting) => number } = {
  squirt({ kit, tipDiameterM, tableLengthM }) {
    const side = tipDiameterM / 2 / (kit.ballRadiusM + kit.tipRadiusM);
    return tableLengthM * Math.tan(squirtAngle(side, kit.massRatio));
  },
  // Exact for small side, tip dome included; from the ball's near surface.
  pivot: ({ kit: { massRatio, ballRadiusM, tipRadiusM } }) =>
    (ballRadiusM + tipRadiusM) * 0.4 * (3.5 + massRatio) - ballRadiusM,
  run: ({ kit }) => MEDIUM_MPS ** 2 / (2 * kit.rollFriction * STANDARD_GRAVITY),
  // Backspin of (5/2) b v/R dies at (5/2) μg/R, while μg slows the ball (Coriolis).
  draw: ({ kit }) =>
    (FIRM_MPS ** 2 * (DRAW_LOW - DRAW_LOW ** 2 / 2)) / (kit.slideFriction * STANDARD_GRAVITY),
  throw({ kit }) {
    const sliding = { ...restingAt(0, 0), vy: SOFT_MPS };
    const [across, along] = [QUARTER_BALL, Math.sqrt(1 - QUARTER_BALL ** 2)];
    const kick = newKick();
    kickOf(sliding, across, along, 0, kit, kick);
    return Math.atan2(across, along) - Math.atan2(kick.x, kick.y);
  },
  rebound: ({ kit }) => -squareRebound(MEDIUM_MPS, kit).rolls / MEDIUM_MPS,
};
