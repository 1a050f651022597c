import type { Circle } from './canvas';
import type { TrialView } from './trial-view';

/** Landings are set by hand in steps of this share of a diamond. */
const STEPS_PER_DIAMOND = 20;

/**
 * The landing that a place on a drawn far rail stands for, right + of the middle diamond, m: within
 * the bed, and on a step.
 *
 * @param x in the drawing, px
 * @param lengthM of the bed, nose to nose; it is half as wide
 */
export function landingAt({ bed }: Pick<TrialView, 'bed'>, lengthM: number, x: number): number {
  const share = Math.max(0, Math.min(1, (x - bed.x) / bed.width)) - 0.5;
  const stepM = lengthM / 8 / STEPS_PER_DIAMOND;
  return Math.round((share * lengthM) / 2 / stepM) * stepM;
}

/** A ball that touches the far rail there. */
export function ballOnRail(
  { bed }: Pick<TrialView, 'bed'>,
  { lengthM, ballRadiusM }: { readonly lengthM: number; readonly ballRadiusM: number },
  landingM: number,
): Circle {
  const pxPerM = bed.width / (lengthM / 2);
  const r = Math.max(LEAST_PX, ballRadiusM * pxPerM);
  return { cx: bed.x + bed.width / 2 + landingM * pxPerM, cy: bed.y + r, r };
}

/** Smaller, a ball under a thumb could not be seen, px. */
const LEAST_PX = 6;
