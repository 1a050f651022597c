import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layOutOverheadView, type OverheadScene } from '../../../src/diagram/overhead-view';

const CANVAS = { widthPx: 366, heightPx: 48, textPx: 13 };
const DEG = Math.PI / 180;

/** A cue ball that sets off right of the straight line and curves back to the ghost ball. */
function curving(over: Partial<OverheadScene> = {}): OverheadScene {
  const distanceM = over.distanceM ?? 1.2;
  const bowM = 0.006;
  const path = Array.from({ length: 21 }, (_, i) => {
    const share = i / 20;
    return { xM: 4 * bowM * share * (1 - share), yM: distanceM * share };
  });
  return { ballRadiusM: 0.028575, distanceM, cutRad: 24 * DEG, aimOffsetM: -0.02, path, ...over };
}

describe('the strip from above', () => {
  it('runs from the cue ball on the left to the contact, right of the line downwards', () => {
    const view = layOutOverheadView(curving(), CANVAS);
    expect(view.cueBall.cx).toBeLessThan(view.ghostBall.cx);
    const middle = view.path[10];
    expect(middle?.y).toBeGreaterThan(view.cueBall.cy);
    expect(view.aim?.to.y).toBeLessThan(view.cueBall.cy);
    expect(view.objectBall.cy).toBeGreaterThan(view.ghostBall.cy);
  });

  it('enlarges sideways by exactly what it tells', () => {
    const view = layOutOverheadView(curving(), CANVAS);
    const pxPerM = (view.ghostBall.cx - view.cueBall.cx) / 1.2;
    const bowPx = (view.path[10]?.y ?? 0) - view.cueBall.cy;
    expect(bowPx / pxPerM / 0.006).toBeCloseTo(view.sideways, 9);
    expect(view.sideways).toBeGreaterThan(1);
  });

  it('makes six millimetres of bow visible', () => {
    const view = layOutOverheadView(curving(), CANVAS);
    expect((view.path[10]?.y ?? 0) - view.cueBall.cy).toBeGreaterThan(4);
  });

  it('keeps the balls round and touching whatever the enlargement', () => {
    const { ghostBall, objectBall } = layOutOverheadView(curving(), CANVAS);
    const apart = Math.hypot(objectBall.cx - ghostBall.cx, objectBall.cy - ghostBall.cy);
    expect(apart).toBeCloseTo(ghostBall.r + objectBall.r, 9);
  });

  it('stays within its strip at any distance, cut and aim', () => {
    const anyScene = fc
      .record({
        distanceM: fc.double({ min: 0.02, max: 2.5, noNaN: true }),
        cutRad: fc.double({ min: -90 * DEG, max: 90 * DEG, noNaN: true }),
        aimOffsetM: fc.double({ min: -0.4, max: 0.4, noNaN: true }),
      })
      .map(curving);
    fc.assert(
      fc.property(anyScene, (scene) => {
        const view = layOutOverheadView(scene, CANVAS);
        // A far aim on a long shot leaves the balls at their least size, which may touch the rim.
        const slack = 5;
        const ys = [
          ...view.path.map(({ y }) => y),
          view.aim?.to.y ?? 0,
          view.target.to.y,
          view.objectBall.cy - view.objectBall.r,
          view.objectBall.cy + view.objectBall.r,
        ];
        expect(Math.min(...ys)).toBeGreaterThanOrEqual(-slack);
        expect(Math.max(...ys)).toBeLessThanOrEqual(CANVAS.heightPx + slack);
        expect(view.target.to.x).toBeLessThanOrEqual(CANVAS.widthPx + slack);
      }),
    );
  });

  it('draws no aim line while there is no answer', () => {
    expect(layOutOverheadView(curving({ aimOffsetM: null, path: [] }), CANVAS).aim).toBeNull();
  });
});
