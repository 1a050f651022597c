import { type SceneStep, type TrialScene, trialScene } from '../../../diagram/trial-scene';
import type { TrialName, TrialShot } from '../../../engine/fit/trials/trials';
import { ANGLE } from './angle';
import { COAST } from './coast';
import { CURVE } from './curve';
import { LINE } from './line';
import { PIVOT } from './pivot';
import { REBOUND } from './rebound';
import { SPEED } from './speed';
import { STOP } from './stop';
import { THROW } from './throw';
import type { TrialFace } from './trial-face';

/** What a person sees of each trial. */
export const FACES: { readonly [N in TrialName]: TrialFace } = {
  line: LINE,
  curve: CURVE,
  stop: STOP,
  throw: THROW,
  coast: COAST,
  pivot: PIVOT,
  speed: SPEED,
  rebound: REBOUND,
  angle: ANGLE,
};

/**
 * What the drawing of a trial shows.
 * @param expectedM the expected landing, right + of the meant line, or null where none is shown
 */
export function sceneOf(
  shot: TrialShot,
  ballRadiusM: number,
  step: SceneStep,
  expectedM: number | null = null,
): TrialScene {
  const { scene } = FACES[shot.trial];
  return trialScene({ shot, ballRadiusM, lengthM: shot.setup.bedLengthM, step, expectedM }, scene);
}
