import { describe, expect, it } from 'vitest';
import { cutOfGhost, draggedContact } from '../../../src/diagram/picture-drags';

const RADIUS_M = 0.028575;
const DEG = Math.PI / 180;
const MARKS = { limit: 0.5, step: 0.25 };

describe('a ghost ball dragged across', () => {
  it.each([
    // Half a ball beside the object ball: a half-ball hit, 30°, away from the side it stands on.
    [-RADIUS_M, 30],
    [RADIUS_M, -30],
    [0, 0],
    // A whole ball is the graze, and what is farther out no thinner than a cut can be played.
    [-2 * RADIUS_M, 89],
    [0.2, -89],
  ])('%f m right of the object ball makes a cut of %f°', (ghostM, cutDeg) => {
    expect(cutOfGhost(ghostM, RADIUS_M) / DEG).toBeCloseTo(cutDeg, 9);
  });

  it('goes through straight from one side to the other', () => {
    const cuts = [-0.01, -0.005, 0, 0.005, 0.01].map((ghostM) => cutOfGhost(ghostM, RADIUS_M));
    expect(cuts.map(Math.sign)).toEqual([1, 1, -0, -1, -1].map(Math.sign));
    expect(cuts.toSorted((a, b) => b - a)).toEqual(cuts);
  });
});

describe('a tip dragged over the ball', () => {
  const from = { side: -0.1, height: 0 };

  it('moves by what the finger moves, right to the right and up upwards', () => {
    // A tenth of a circle of 100 px.
    expect(draggedContact(from, 20, -10, 100, MARKS)).toEqual({ side: 0.1, height: 0.1 });
  });

  it('is held to the miscue limit in the direction it is dragged', () => {
    const { side, height } = draggedContact({ side: 0, height: 0 }, 300, 400, 100, MARKS);
    expect(Math.hypot(side, height)).toBeLessThanOrEqual(0.5 + 1e-9);
    expect(side).toBeCloseTo(0.3, 9);
    expect(height).toBeCloseTo(-0.4, 9);
  });

  it('settles on a marked contact close by', () => {
    expect(draggedContact(from, 33, 2, 100, MARKS)).toEqual({ side: 0.25, height: 0 });
  });
});
