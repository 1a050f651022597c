import { expect, it } from 'vitest';
import { restingAt } from '../../../../src/engine/ball/ball-state';
import { layoutOf } from '../../../../src/engine/direct/layout';
import { fliesOver } from '../../../../src/engine/direct/over-flight';
import type { Shot } from '../../../../src/engine/direct/shot';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';
import { flight } from '../../../../src/engine/motion/flight';
import { slide } from '../../../../src/engine/motion/slide';

const PLAIN: Shot = { distanceM: 0.5, cutRad: 0, side: 0, height: 0, elevationRad: 0, speedMps: 1 };
const R = DEFAULT_KIT.ballRadiusM;
/** The object ball at 0.5 m and two radii, straight ahead. */
const layout = layoutOf(PLAIN, R);
const leaping = { ...restingAt(0, 0), vz: 2 };

it('is so where the plan of the flight passes within two radii', () => {
  expect(fliesOver(flight({ ...leaping, vy: 2 }, 0, DEFAULT_KIT), layout)).toBe(true);
  const beside = { ...leaping, vy: 2, vx: (2 * 1.9 * R) / layout.objectYM };
  expect(fliesOver(flight(beside, 0, DEFAULT_KIT), layout)).toBe(true);
});

it('is not so where the flight passes by, lands before, or leaves', () => {
  const wide = { ...leaping, vy: 2, vx: (2 * 2.1 * R) / layout.objectYM };
  expect(fliesOver(flight(wide, 0, DEFAULT_KIT), layout)).toBe(false);
  const short = { ...leaping, vy: 1.1 };
  expect(fliesOver(flight(short, 0, DEFAULT_KIT), layout)).toBe(false);
  expect(fliesOver(flight({ ...leaping, vy: -2 }, 0, DEFAULT_KIT), layout)).toBe(false);
});

it('is not so of a ball that jumps on the spot, or stays down', () => {
  expect(fliesOver(flight(leaping, 0, DEFAULT_KIT), layout)).toBe(false);
  expect(fliesOver(slide({ ...restingAt(0, 0), vy: 3 }, 0, DEFAULT_KIT), layout)).toBe(false);
});
