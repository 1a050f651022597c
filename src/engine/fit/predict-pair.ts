import { type Contact, play } from '../direct/contact';
import { layoutOf } from '../direct/layout';
import type { Kit } from '../kit/kit';
import { travel } from '../motion/journey';
import { lineCrossing } from '../motion/line-crossing';
import type { Stroke } from '../stroke/stroke';
import type { Readings, TrialSetup } from './trial-shot';

/**
 * How far cue ball and object ball run on, along the straight line, after they meet; null where
 * they do not.
 */
export function predictRunsAfter(kit: Kit, stroke: Stroke, setup: TrialSetup): Readings | null {
  const contact = contactOf(kit, stroke, setup);
  if (contact === null) return null;
  const { cueBall, objectBall } = contact.after;
  return {
    cueBallM: travel(cueBall, 0, kit, []).end.yM - cueBall.yM,
    objectBallM: travel(objectBall, 0, kit, []).end.yM - objectBall.yM,
  };
}

/** Where the object ball reaches the far cushion, off the line of centres as it was set up. */
export function predictObjectLanding(kit: Kit, stroke: Stroke, setup: TrialSetup): Readings | null {
  const contact = contactOf(kit, stroke, setup);
  if (contact === null) return null;
  const { objectBall } = contact.after;
  const crossing = lineCrossing(travel(objectBall, 0, kit, []).phases, {
    fromXM: objectBall.xM,
    fromYM: objectBall.yM,
    alongRad: setup.cutRad,
    distanceM: setup.distanceM,
  });
  return crossing && { objectLandingM: crossing.rightM };
}

function contactOf(kit: Kit, stroke: Stroke, setup: TrialSetup): Contact | null {
  const balls = { distanceM: setup.gapM, cutRad: setup.cutRad };
  return play(stroke, layoutOf(balls, kit.ballRadiusM), kit).contact;
}
