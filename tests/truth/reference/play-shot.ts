import type { Shot } from '../../../src/engine/direct/shot';
import type { Kit } from '../../../src/engine/kit/kit';
import { ballImpact, type Impact } from './ball-impact';
import { followBall, type PathEnd, type PathOptions } from './cue-ball-path';
import { stretchRunner } from './stretch';
import { tipStrike } from './tip-strike';
import type { Vec3 } from './vec3';

/** A shot played out by the reference: the path, and the impact if there was one. */
export interface Played {
  readonly arrival: PathEnd;
  readonly impact: Impact | null;
}

/** Close to what double precision can do. */
export const FINE: PathOptions = { run: stretchRunner(1e-11), restSpeedMps: 1e-6 };

/** Where the object ball lies: a ball's width beyond the ghost ball, along the target line. */
export function objectBallAt({ distanceM, cutRad }: Shot, kit: Kit): Vec3 {
  const widthM = 2 * kit.ballRadiusM;
  return [widthM * Math.sin(cutRad), distanceM + widthM * Math.cos(cutRad), 0];
}

/** Plays a shot at an aim, rad from the straight line, right +. */
export function playShot(shot: Shot, kit: Kit, aimRad: number, options = FINE): Played {
  const at = objectBallAt(shot, kit);
  const target = { at, reachM: 2 * kit.ballRadiusM };
  const arrival = followBall(tipStrike(shot, aimRad, kit), kit, target, options);
  return { arrival, impact: arrival.touched ? ballImpact(arrival.body, at, kit) : null };
}
