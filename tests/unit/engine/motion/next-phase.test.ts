import { expect, it } from 'vitest';
import { type BallState, restingAt } from '../../../../src/engine/ball/ball-state';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';
import { nextPhase } from '../../../../src/engine/motion/next-phase';

const R = DEFAULT_KIT.ballRadiusM;
const still = restingAt(0.3, 0.4);

it.each<[string, BallState, string | null]>([
  ['at rest', still, null],
  ['spinning about the vertical only', { ...still, wz: -50 }, null],
  ['rolling', { ...still, vx: 1, wy: 1 / R }, 'rolling'],
  ['skidding', { ...still, vx: 1 }, 'sliding'],
  ['spinning on the spot', { ...still, wx: 30 }, 'sliding'],
  ['thrown up', { ...still, vz: 1 }, 'flying'],
  ['in the air', { ...still, zM: 0.01 }, 'flying'],
  ['falling on the bed', { ...still, vx: 1, vz: -2 }, 'flying'],
  ['pressed on the bed', { ...still, vx: 1, vz: -1e-6 }, 'sliding'],
  ['slipping by rounding', { ...still, vx: 1, wy: (1 + 1e-13) / R }, 'rolling'],
  ['moving by rounding', { ...still, vx: 1e-14, wy: 1e-14 / R }, null],
])('a ball %s', (_, ball, motion) => {
  expect(nextPhase(ball, 7, DEFAULT_KIT)?.motion ?? null).toBe(motion);
});

it('starts the phase where and when the ball is', () => {
  const phase = nextPhase({ ...still, vx: 1 }, 7, DEFAULT_KIT);
  expect(phase).toMatchObject({ startS: 7, start: { xM: 0.3, yM: 0.4, vx: 1 } });
});
