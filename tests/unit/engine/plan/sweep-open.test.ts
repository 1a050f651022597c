import { describe, expect, it } from 'vitest';
import { directCut } from '../../../../src/engine/goal/goal';
import type { NamedBall } from '../../../../src/engine/lie/position';
import { gridFrom } from '../../../../src/engine/plan/grid-from';
import { pathInTheWay } from '../../../../src/engine/plan/path-in-the-way';
import { sweepOpen } from '../../../../src/engine/plan/sweep-open';
import { sweepOptions } from '../../../../src/engine/plan/sweep-options';
import { askPosition } from '../../../harness/invented-positions';

/** A straight shot into the far right pocket, and what else lies about. */
const BALLS: readonly NamedBall[] = [
  { name: 'cue', xM: -0.35, yM: 0.27 },
  { name: 3, xM: 0.3, yM: 0.92 },
];

/** All sides and speeds of the usual grid at middle height, the cue raised by so many steps. */
function swept(others: readonly NamedBall[] = [], raised = 0) {
  const { asked, shot } = askPosition([...BALLS, ...others], directCut(3, 'far-right'));
  const { position, shape, kit } = asked.scene;
  const grid = gridFrom(position, shot.headingRad, shape, kit);
  const size = grid.sides.length * grid.speedsMps.length;
  const from = raised * grid.heights.length * size;
  const stretch = { from, to: from + size };
  const open = sweepOpen(asked, grid, stretch);
  return { shot, asked, open, all: sweepOptions(asked.question, grid, stretch) };
}

describe('the options that can be played', () => {
  it('are all of them on an open table', () => {
    const { open, all } = swept();
    expect(open.length).toBeGreaterThan(100);
    expect(open).toEqual(all);
  });

  it('are none where a ball stands square in the way of the cue ball', () => {
    const { shot, open, all } = swept([{ name: 9, xM: -0.05, yM: 0.57 }]);
    expect(shot.inTheWay).toEqual([{ mover: 'cue', what: 9 }]);
    expect(all.length).toBeGreaterThan(100);
    expect(open).toEqual([]);
  });

  it('are none where a ball stands in the way of the ball that is played', () => {
    const { shot, open } = swept([{ name: 9, xM: 0.42, yM: 1.04 }]);
    expect(shot.inTheWay).toEqual([{ mover: 'object', what: 9 }]);
    expect(open).toEqual([]);
  });

  it('are those that curve by where a ball only just stands in the way', () => {
    const [half, aside] = [Math.SQRT1_2, 0.05415];
    const just: NamedBall = { name: 8, xM: -0.1 + aside * half, yM: 0.52 - aside * half };
    const { asked, open, all } = swept([just], 3);
    const places = open.map(({ place }) => place);
    const byPlay = all.filter((option) => pathInTheWay(asked.scene, option).length === 0);
    expect(byPlay.length).toBeGreaterThan(0);
    expect(byPlay.length).toBeLessThan(all.length);
    expect(places).toEqual(byPlay.map(({ place }) => place));
  });
});
