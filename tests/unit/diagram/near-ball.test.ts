import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Point } from '../../../src/diagram/canvas';
import type { TipOnBall } from '../../../src/diagram/near-ball';
import { layOutShooterView } from '../../../src/diagram/shooter-view';
import { solveAim } from '../../../src/engine/direct/solve-aim';
import { DEFAULT_KIT } from '../../../src/engine/kit/kit';
import { DEFAULT_SHOT } from '../../../src/store/default-desk';

const CANVAS = { widthPx: 366, heightPx: 300, textPx: 13 };
const { ballRadiusM, tipRadiusM } = DEFAULT_KIT;

/** The engine's own answer to a shot, drawn. */
function drawn(side: number, height: number, cutRad = 0.4, lead = 'object-ball' as const) {
  const shot = { ...DEFAULT_SHOT, side, height, cutRad };
  const answer = solveAim(shot, DEFAULT_KIT);
  if (!answer.ok) throw new Error(answer.reason);
  const tip: TipOnBall = {
    side,
    height,
    limit: 0.5,
    domeRadii: tipRadiusM / ballRadiusM,
    widthRadii: 0.013 / ballRadiusM,
  };
  const scene = { ballRadiusM, distanceM: shot.distanceM, cutRad, lead, tip };
  const known = { marks: answer, bandRad: null, sureRad: null, held: null };
  const view = layOutShooterView({ ...scene, ...known }, CANVAS);
  if (!view.near?.lines || !view.aim) throw new Error('nothing is drawn in front');
  return { view, near: view.near, lines: view.near.lines, answer };
}

/** How far a point lies beside the line through two others, px. */
function besidePx(at: Point, from: Point, to: Point): number {
  const [wx, wy] = [to.x - from.x, to.y - from.y];
  return Math.abs((at.x - from.x) * wy - (at.y - from.y) * wx) / Math.hypot(wx, wy);
}

const contacts = fc
  .record({
    side: fc.double({ min: -0.35, max: 0.35, noNaN: true }),
    height: fc.double({ min: -0.35, max: 0.35, noNaN: true }),
  })
  .filter(({ side }) => Math.abs(side) > 0.05);

describe('the cue ball in front', () => {
  it('lies straight under the ghost ball and is as large as the object ball', () => {
    const { view, near } = drawn(-0.3, 0.1);
    expect(near.ball.cx).toBe(view.ghostBall.cx);
    expect(near.ball.r).toBeCloseTo(view.objectBall.r, 9);
    expect(near.ball.cy - near.ball.r).toBeGreaterThan(view.ruler.y);
  });

  it('has the tip at its true side and height, the dome beyond the contact', () => {
    const { near } = drawn(-0.3, 0.2);
    // A dome of 9.5 mm on a ball of 28.575 mm puts the tip's middle a third of a radius farther out.
    const out = near.ball.r * (1 + 0.0095 / 0.028575);
    expect(near.tip.cx).toBeCloseTo(near.ball.cx - 0.3 * out, 9);
    expect(near.tip.cy).toBeCloseTo(near.ball.cy - 0.2 * out, 9);
    expect(near.limit.r).toBeCloseTo(near.ball.r / 2, 9);
  });

  it('has the cue on the line from its mark on the far plane through the tip', () => {
    fc.assert(
      fc.property(contacts, ({ side, height }) => {
        const { view, near, lines } = drawn(side, height);
        const tip = { x: near.tip.cx, y: near.tip.cy };
        const mark = lines.cue.to;
        expect(mark).toEqual({ x: view.stick?.x ?? mark.x, y: view.ruler.y });
        const [a, b, c, d] = lines.shaft;
        if (!a || !b || !c || !d) throw new Error('the shaft has no outline');
        const middle = { x: (b.x + c.x) / 2, y: (b.y + c.y) / 2 };
        expect(besidePx(middle, mark, tip)).toBeLessThan(1e-6);
        expect(besidePx(lines.cue.from, mark, tip)).toBeLessThan(1e-6);
        // It tapers towards the tip, and goes on below the picture.
        expect(Math.hypot(b.x - c.x, b.y - c.y)).toBeGreaterThan(Math.hypot(a.x - d.x, a.y - d.y));
        expect(Math.min(b.y, c.y)).toBeGreaterThanOrEqual(CANVAS.heightPx - 1);
      }),
      { numRuns: 30 },
    );
  });

  it('has the aim line from its centre to the aim’s mark', () => {
    const { view, near, lines } = drawn(-0.3, 0.2);
    expect(lines.aimOnBall.from).toEqual({ x: near.ball.cx, y: near.ball.cy });
    expect(lines.aimOnBall.to).toEqual(lines.aim.from);
    expect(lines.aim.to).toEqual({ x: view.aim?.x, y: view.ruler.y });
    expect(besidePx(lines.aim.from, lines.aimOnBall.from, lines.aim.to)).toBeLessThan(1e-6);
  });

  it('draws cue and aim line as parallel as they are, for a tip at mid-height', () => {
    for (const side of [-0.4, -0.2, 0.15, 0.35]) {
      const { near, lines, answer } = drawn(side, 0);
      const slope = ({ x, y }: Point, from: Point) => (x - from.x) / (y - from.y);
      const cue = slope(lines.cue.to, { x: near.tip.cx, y: near.tip.cy });
      const aim = slope(lines.aim.to, lines.aimOnBall.from);
      // Square to the straight line they are farther apart by the aim's cosine: nothing to be seen.
      expect(Math.abs(cue - aim)).toBeLessThan(2 * (1 / Math.cos(answer.aimRad) - 1) + 1e-9);
    }
  });
});
