import { DEFAULT_KIT, type Kit } from '../../../src/engine/kit/kit';
import { NO_SQUIRT } from '../../harness/idealised-kits';
import { type Body, GRAVITY } from '../reference/body';
import type { Stroke } from '../reference/tip-strike';

const R = DEFAULT_KIT.ballRadiusM;

/** Worked figures take g as this, m/s²; a friction coefficient is scaled so that μ·g is theirs. */
export const WORKED_GRAVITY = 9.81;

/** Without squirt, and with friction (sliding or rolling) as strong as under the worked gravity. */
export function workedKit(kit: Partial<Kit>): Kit {
  const scale = WORKED_GRAVITY / GRAVITY;
  const { slideFriction, rollFriction } = { ...NO_SQUIRT, ...kit };
  return {
    ...NO_SQUIRT,
    ...kit,
    slideFriction: slideFriction * scale,
    rollFriction: rollFriction * scale,
  };
}

/** A level stroke. */
export function level(side: number, height: number, speedMps: number): Stroke {
  return { side, height, elevationRad: 0, speedMps };
}

/** A cue ball sliding along y without spin. */
export function stunned(speedMps: number): Body {
  return { at: [0, 0, 0], velocity: [0, speedMps, 0], spin: [0, 0, 0] };
}

/** A cue ball rolling along y. */
export function rolling(speedMps: number): Body {
  return { ...stunned(speedMps), spin: [-speedMps / R, 0, 0] };
}

/** Direction of a velocity, degrees right of y. */
export function directionDeg({ velocity: [vx, vy] }: Body): number {
  return (Math.atan2(vx, vy) * 180) / Math.PI;
}

export function speedOf({ velocity: [vx, vy] }: Body): number {
  return Math.hypot(vx, vy);
}
