import { newPlace, type Phase, placeAt } from '../motion/phase';
import { length } from '../numerics/length';
import type { Layout } from './layout';

/**
 * Whether a flying phase carries the cue ball over the object ball: at its nearest in plan, which
 * on the straight plan of a flight is one moment, the two overlap seen from above.
 */
export function fliesOver(phase: Phase, layout: Layout): boolean {
  if (phase.motion !== 'flying') return false;
  const place = newPlace();
  placeAt(phase, nearestTime(phase, layout), place);
  const planM = length(layout.objectXM - place.xM, layout.objectYM - place.yM);
  return planM < layout.reachM;
}

/** The bed's tilt bends a flight's plan by far less than a ball, so it is left out here. */
function nearestTime(phase: Phase, layout: Layout): number {
  const { start, linearX: vx, linearY: vy } = phase;
  const towards = (layout.objectXM - start.xM) * vx + (layout.objectYM - start.yM) * vy;
  const timeS = towards / (vx * vx + vy * vy);
  return Math.min(phase.durationS, Math.max(0, timeS || 0));
}
