import type { BallState } from '../../../src/engine/ball/ball-state';
import { play } from '../../../src/engine/direct/contact';
import { layoutOf } from '../../../src/engine/direct/layout';
import { playAim } from '../../../src/engine/direct/play-aim';
import { strokeOf } from '../../../src/engine/direct/shot';
import type { Body } from '../reference/body';
import { followBall, type PathOptions } from '../reference/cue-ball-path';
import { FINE, objectBallAt, playShot } from '../reference/play-shot';
import { length, minus, type Vec3 } from '../reference/vec3';
import type { AgreementCase } from './agreement-cases';
import { type FollowedRub, followedRub } from './followed-rub';

const DEG = 180 / Math.PI;

/** What is compared, each in its unit. */
export const QUANTITIES = {
  place: { name: 'cue ball’s place at contact', unit: 'mm' },
  time: { name: 'time of contact', unit: 'ms' },
  direction: { name: 'cue ball’s direction at contact', unit: '°' },
  speed: { name: 'cue ball’s speed at contact', unit: '%' },
  spin: { name: 'cue ball’s spin at contact, at the surface', unit: '% of speed' },
  objectDirection: { name: 'object ball’s direction', unit: '°' },
  objectSpeed: { name: 'object ball’s speed', unit: '%' },
  velocitiesAfter: { name: 'both balls’ velocities just after', unit: '% of speed' },
  spinsAfter: { name: 'both balls’ spins just after, at the surface', unit: '% of speed' },
  rollsOff: { name: 'cue ball’s direction once it rolls', unit: '°' },
} as const;

export type Quantity = keyof typeof QUANTITIES;

/** How far the two are apart, without sign; null where there is nothing to compare. */
export type Differences = Readonly<Record<Quantity, number | null>>;

/** What came of a stroke. */
export type Comparison =
  | {
      readonly outcome: 'touch';
      readonly differences: Differences;
      readonly rub: FollowedRub;
    }
  | { readonly outcome: 'miss' }
  | { readonly outcome: 'disagree'; readonly engine: string; readonly reference: string };

/** Rolling off slower than this, m/s, a ball has hardly a direction. */
const CRAWLING_MPS = 0.02;

/** Plays a stroke by the engine and by the reference. */
export function compareShot(
  { shot, kit, aimRad }: AgreementCase,
  options: PathOptions = FINE,
): Comparison {
  const told = playAim(shot, kit, aimRad);
  const { contact } = play(strokeOf(shot, aimRad), layoutOf(shot, kit.ballRadiusM), kit);
  const { arrival, impact } = playShot(shot, kit, aimRad, options);
  if (contact === null || !told.ok) {
    if (impact === null) return { outcome: 'miss' };
    return { outcome: 'disagree', engine: told.ok ? 'touch' : told.reason, reference: 'touch' };
  }
  if (impact === null) return { outcome: 'disagree', engine: 'touch', reference: 'miss' };
  const { cueBall, after } = contact;
  const { body } = arrival;
  const speedMps = length(body.velocity);
  const percent = (part: number, whole: number) => (100 * Math.abs(part)) / whole;
  const objectMps = planSpeed(impact.objectBall);
  return {
    outcome: 'touch',
    rub: followedRub(body, impact, objectBallAt(shot, kit), kit),
    differences: {
      place: 1000 * length(minus(body.at, [cueBall.xM, cueBall.yM, cueBall.zM])),
      time: 1000 * Math.abs(arrival.timeS - contact.timeS),
      direction: degreesApart(body.velocity, told.arrival.directionRad),
      speed: percent(planSpeed(body) - told.arrival.speedMps, planSpeed(body)),
      spin: percent(kit.ballRadiusM * length(minus(body.spin, spinOf(cueBall))), speedMps),
      objectDirection: degreesApart(impact.objectBall.velocity, told.objectBall.directionRad),
      objectSpeed: percent(objectMps - told.objectBall.speedMps, objectMps),
      velocitiesAfter: percent(
        Math.hypot(
          length(minus(impact.cueBall.velocity, velocityOf(after.cueBall))),
          length(minus(impact.objectBall.velocity, velocityOf(after.objectBall))),
        ),
        speedMps,
      ),
      spinsAfter: percent(
        kit.ballRadiusM *
          Math.hypot(
            length(minus(impact.cueBall.spin, spinOf(after.cueBall))),
            length(minus(impact.objectBall.spin, spinOf(after.objectBall))),
          ),
        speedMps,
      ),
      rollsOff: rollingApart(impact.cueBall, told.cueBall.rollingDirectionRad),
    },
  };

  function rollingApart(cueBallAfter: Body, directionRad: number | null): number | null {
    const { body: rolling } = followBall(cueBallAfter, kit, null, options, 'rolling');
    return planSpeed(rolling) < CRAWLING_MPS ? null : degreesApart(rolling.velocity, directionRad);
  }
}

const velocityOf = ({ vx, vy, vz }: BallState): Vec3 => [vx, vy, vz];

const spinOf = ({ wx, wy, wz }: BallState): Vec3 => [wx, wy, wz];

const planSpeed = ({ velocity }: Body): number => Math.hypot(velocity[0], velocity[1]);

function degreesApart([vx, vy]: Vec3, directionRad: number | null): number {
  const apart = Math.atan2(vx, vy) - (directionRad ?? Number.NaN);
  return Math.abs(Math.atan2(Math.sin(apart), Math.cos(apart))) * DEG;
}
