import type { BallState } from '../../../../src/engine/ball/ball-state';
import { DEFAULT_KIT, type Kit } from '../../../../src/engine/kit/kit';
import { flight } from '../../../../src/engine/motion/flight';
import type { Motion, Phase } from '../../../../src/engine/motion/phase';
import { roll } from '../../../../src/engine/motion/roll';
import { slide } from '../../../../src/engine/motion/slide';
import { between, type Random } from '../../../harness/seeded-random';

/** A kit of any make, its bed tilted up to a slope on which a ball still comes to rest. */
export function anyKit(random: Random, slopeM_per_M = 0): Kit {
  const clock = between(random, 0, 2 * Math.PI);
  const tilt = slopeM_per_M * random();
  return {
    ...DEFAULT_KIT,
    slideFriction: between(random, 0.05, 0.8),
    rollFriction: between(random, 0.012, 0.05),
    spinDecayRadS2: between(random, 0, 40),
    ballRestitution: between(random, 0.5, 1),
    ballFriction: {
      a: between(random, 0, 0.3),
      b: between(random, 0, 0.4),
      c: between(random, 0, 5),
    },
    bedRestitution: between(random, 0, 0.95),
    ballRadiusM: between(random, 0.02, 0.04),
    cueBallMassRatio: between(random, 0.7, 1.5),
    bedSlope: { alongM_per_M: tilt * Math.cos(clock), rightM_per_M: tilt * Math.sin(clock) },
  };
}

/** A ball on the bed near the origin, moving and spinning anyhow but not up or down. */
export function anyBall(random: Random): BallState {
  const speed = Math.exp(between(random, -3, 2));
  const way = between(random, 0, 2 * Math.PI);
  return {
    xM: between(random, -0.1, 0.1),
    yM: between(random, -0.1, 0.1),
    zM: 0,
    vx: speed * Math.cos(way),
    vy: speed * Math.sin(way),
    vz: 0,
    wx: between(random, -150, 150),
    wy: between(random, -150, 150),
    wz: between(random, -150, 150),
  };
}

/** A phase of that motion of any ball. */
export function anyPhase(random: Random, motion: Motion, kit: Kit): Phase {
  const ball = anyBall(random);
  const startS = between(random, 0, 3);
  if (motion === 'sliding') return slide(ball, startS, kit);
  if (motion === 'flying') return flight({ ...ball, vz: between(random, 0.01, 3) }, startS, kit);
  const { vx, vy } = ball;
  const { ballRadiusM } = kit;
  return roll({ ...ball, wx: -vy / ballRadiusM, wy: vx / ballRadiusM }, startS, kit);
}
