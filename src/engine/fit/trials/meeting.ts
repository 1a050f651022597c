import { type Contact, meet } from '../../direct/contact';
import { layoutOf } from '../../direct/layout';
import type { Kit } from '../../kit/kit';
import type { Stroke } from '../../stroke/stroke';
import type { TrialSetup } from './trial';

/** How the two balls of a set-up meet; null where they do not. */
export function contactOf(kit: Kit, stroke: Stroke, setup: TrialSetup): Contact | null {
  const balls = { distanceM: setup.gapM, cutRad: setup.cutRad };
  return meet(stroke, layoutOf(balls, kit.ballRadiusM), kit).contact;
}
