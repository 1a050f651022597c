import { describe, expect, it } from 'vitest';
import { directCut } from '../../../../src/engine/goal/goal';
import type { NamedBall } from '../../../../src/engine/lie/position';
import { pathCheck, pathInTheWay } from '../../../../src/engine/plan/path-in-the-way';
import { askPosition, someOptions } from '../../../harness/invented-positions';

/** A straight shot of a metre and more into the far right pocket, and what else lies about. */
const BALLS: readonly NamedBall[] = [
  { name: 'cue', xM: -0.35, yM: 0.27 },
  { name: 3, xM: 0.3, yM: 0.92 },
];
const GOAL = directCut(3, 'far-right');
const position = (...others: readonly NamedBall[]) => askPosition([...BALLS, ...others], GOAL);

describe('what a played option would hit', () => {
  it('is nothing on an open table', () => {
    const open = position();
    const options = someOptions(open, 6);
    const isOpen = pathCheck(open.asked);
    expect(options.length).toBeGreaterThan(50);
    for (const option of options) {
      expect(isOpen(option)).toBe(true);
      expect(pathInTheWay(open.asked.scene, option)).toEqual([]);
    }
  });

  it('is a ball that leaves no way past, for every option', () => {
    // Two balls that close a good half metre square across the line.
    const fence = [-3, -2, -1, 0, 1, 2, 3].map((at) => ({
      name: 8 + at,
      xM: -0.05 - at * 0.0405,
      yM: 0.57 + at * 0.0405,
    }));
    const closed = position(...fence.filter(({ name }) => name !== 3));
    const isOpen = pathCheck(closed.asked);
    const options = someOptions(closed, 4);
    const level = options.filter(({ stroke }) => stroke.elevationRad < 0.1);
    expect(level.length).toBeGreaterThan(20);
    for (const option of level) {
      expect(isOpen(option)).toBe(false);
      expect(pathInTheWay(closed.asked.scene, option)[0]?.mover).toBe('cue');
    }
  });

  it('is nothing for those that curve or hop past a ball that only just lies in the line', () => {
    // Its surface stands 3 mm into the cue ball's way, on the right.
    const half = Math.SQRT1_2;
    const aside = 0.05415;
    const just = position({ name: 8, xM: -0.1 + aside * half, yM: 0.52 - aside * half });
    expect(just.shot.inTheWay).toEqual([{ mover: 'cue', what: 8 }]);
    const { scene } = just.asked;
    const isOpen = pathCheck(just.asked);
    const options = someOptions(just, 4);
    const open = options.filter(isOpen);
    expect(open.length).toBeGreaterThan(0);
    expect(open.length).toBeLessThan(options.length / 2);
    // Played on the whole table every one of them meets the object ball first, and no other does.
    for (const option of options) {
      const first = pathInTheWay(scene, option).find(({ mover }) => mover === 'cue');
      expect(first?.what ?? 3).toBe(isOpen(option) ? 3 : 8);
    }
  });

  it('is a ball that the object ball would meet', () => {
    const blocked = position({ name: 9, xM: 0.42, yM: 1.04 });
    const [option] = someOptions(blocked, 6);
    if (option === undefined) throw new Error('no option');
    expect(pathInTheWay(blocked.asked.scene, option)).toEqual([{ mover: 'object', what: 9 }]);
    expect(blocked.shot.inTheWay).toEqual([{ mover: 'object', what: 9 }]);
    expect(pathCheck(blocked.asked)(option)).toBe(false);
  });
});
