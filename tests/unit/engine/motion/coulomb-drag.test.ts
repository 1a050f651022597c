import { describe, expect, it } from 'vitest';
import {
  addDragged,
  type CoulombDrag,
  coulombDrag,
} from '../../../../src/engine/motion/coulomb-drag';
import { between, type Random, seededRandom } from '../../../harness/seeded-random';
import { steppedDrag } from './stepped-drag';

/** Velocity and displacement at a time, s. */
function draggedAt(motion: CoulombDrag, timeS: number) {
  const moved = { xM: 0, yM: 0, vx: 0, vy: 0 };
  addDragged(motion, 1, timeS, moved);
  return { wx: moved.vx, wy: moved.vy, dx: moved.xM, dy: moved.yM };
}

type Pair = readonly [number, number];

interface Case {
  readonly w: Pair;
  readonly drag: number;
  readonly push: Pair;
}

/** Speeds 7 mm/s to 12 m/s, drags 0.02 to 20 m/s², a push of that share of the drag at an angle. */
function randomCase(random: Random, share: number, offAngle: number): Case {
  const drag = Math.exp(between(random, -4, 3));
  const speed = Math.exp(between(random, -5, 2.5));
  const way = between(random, 0, 2 * Math.PI);
  const pushed = way + offAngle;
  return {
    w: [speed * Math.cos(way), speed * Math.sin(way)],
    drag,
    push: [drag * share * Math.cos(pushed), drag * share * Math.sin(pushed)],
  };
}

const motionOf = ({ w, drag, push }: Case) => coulombDrag(w[0], w[1], drag, push[0], push[1]);

// Against a stepped integration written without the solution: its own error is below 1e-10.
describe.each([
  ['along the way', 0],
  ['against the way', Math.PI],
  ['square to the way', Math.PI / 2],
  ['a hair off the way', 1e-7],
  ['a hair off against the way', Math.PI - 1e-5],
  ['at a slant', 2.1],
])('a push %s', (_, offAngle) => {
  it.each([0, 1e-12, 1e-5, 0.02, 0.4, 0.9])('of %d of the drag moves as stepped', (share) => {
    const random = seededRandom(31);
    for (let count = 0; count < 8; count++) {
      const asked = randomCase(random, share, offAngle);
      const motion = motionOf(asked);
      const untilS = motion.durationS * between(random, 0.02, 0.95);
      const stepped = steppedDrag(asked.w, asked.drag, asked.push, untilS);
      const dragged = draggedAt(motion, stepped.timeS);
      const speed = Math.hypot(...asked.w);
      const off = Math.hypot(dragged.wx - stepped.wx, dragged.wy - stepped.wy);
      const astray = Math.hypot(dragged.dx - stepped.dx, dragged.dy - stepped.dy);
      expect(off / speed).toBeLessThan(1e-9);
      expect(astray / (speed * stepped.timeS)).toBeLessThan(1e-9);
    }
  });
});

describe('coulombDrag', () => {
  it('comes to rest when and where the stepped motion does', () => {
    const random = seededRandom(32);
    for (let count = 0; count < 12; count++) {
      const asked = randomCase(random, between(random, 0, 0.8), between(random, 0, 6));
      const motion = motionOf(asked);
      const stepped = steppedDrag(asked.w, asked.drag, asked.push, Number.POSITIVE_INFINITY);
      const end = draggedAt(motion, motion.durationS);
      const reach = Math.hypot(stepped.dx, stepped.dy);
      expect(Math.abs(stepped.timeS / motion.durationS - 1)).toBeLessThan(1e-7);
      expect(Math.hypot(end.dx - stepped.dx, end.dy - stepped.dy) / reach).toBeLessThan(1e-7);
      expect([end.wx, end.wy].map(Math.abs)).toEqual([0, 0]);
    }
  });

  it('starts where and as it starts', () => {
    const { wx, wy, dx, dy } = draggedAt(coulombDrag(3, -1, 2, 0.3, 0.9), 0);
    expect([wx, wy]).toEqual([expect.closeTo(3, 14), expect.closeTo(-1, 14)]);
    expect([dx, dy]).toEqual([expect.closeTo(0, 14), expect.closeTo(0, 14)]);
  });

  it('agrees with the plain parabola where nothing pushes', () => {
    // Source: uniform deceleration. Exact.
    const motion = coulombDrag(1.2, -0.9, 2.5, 0, 0);
    expect(motion.durationS).toBeCloseTo(1.5 / 2.5, 14);
    const { wx, wy, dx, dy } = draggedAt(motion, 0.4);
    expect([wx, wy]).toEqual([expect.closeTo(0.4, 14), expect.closeTo(-0.3, 14)]);
    expect([dx, dy]).toEqual([expect.closeTo(0.32, 14), expect.closeTo(-0.24, 14)]);
  });

  it('takes the smallest pushes for none, whatever direction their last bits show', () => {
    const level = draggedAt(coulombDrag(1, 2, 2, 0, 0), 0.3);
    for (const push of [5e-324, 1e-323, 1e-310, 1e-200]) {
      const pushed = draggedAt(coulombDrag(1, 2, 2, push, push), 0.3);
      expect(pushed.wx).toBeCloseTo(level.wx, 13);
      expect(pushed.wy).toBeCloseTo(level.wy, 13);
      expect(pushed.dx).toBeCloseTo(level.dx, 13);
    }
  });

  it('keeps its figures where the push all but balances the drag, to the end', () => {
    // What falls linearly: a|w| + b·w, at the rate a² − b². Exact.
    for (const share of [0.99, 0.999, 0.9999]) {
      const [drag, push] = [0.0256, 0.0256 * share];
      const motion = coulombDrag(-0.0028, -0.0066, drag, push, 0);
      const heldAt = ({ wx, wy }: { readonly wx: number; readonly wy: number }) =>
        drag * Math.hypot(wx, wy) + push * wx;
      const start = heldAt(draggedAt(motion, 0));
      for (let left = 1; left > 1e-9; left *= 0.7) {
        const now = heldAt(draggedAt(motion, motion.durationS * (1 - left)));
        expect(Math.abs(now / start - left)).toBeLessThan(1e-13);
      }
    }
  });

  it('refuses what nothing would stop', () => {
    expect(() => coulombDrag(1, 0, 1, 1, 0)).toThrow(RangeError);
    expect(() => coulombDrag(1, 0, 1, 0, 2)).toThrow(RangeError);
    expect(() => coulombDrag(1, 0, 1, Number.NaN, 0)).toThrow(RangeError);
  });
});
