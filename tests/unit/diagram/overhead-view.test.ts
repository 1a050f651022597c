import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { textWidthPx } from '../../../src/diagram/canvas';
import {
  layOutOverheadView,
  type OverheadScene,
  SIDEWAYS,
} from '../../../src/diagram/overhead-view';
import { layOutRun } from '../../../src/diagram/run-scale';

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
  const shot = { distanceM, cutRad: 24 * DEG, aimOffsetM: -0.02, path };
  const table = { ballRadiusM: 0.028575, tableLengthM: 2.54 };
  return { ...table, ...shot, ...over };
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

  it('enlarges sideways by what it says, whatever the shot', () => {
    for (const distanceM of [0.2, 1.2, 2.5]) {
      const view = layOutOverheadView(curving({ distanceM }), CANVAS);
      const pxPerM = (view.ghostBall.cx - view.cueBall.cx) / distanceM;
      const bowPx = (view.path[10]?.y ?? 0) - view.cueBall.cy;
      expect(bowPx / pxPerM / 0.006).toBeCloseTo(SIDEWAYS, 9);
    }
  });

  it('keeps one scale: the longest way on the table from end to end', () => {
    const pxPerM = (distanceM: number, over = {}) => {
      const view = layOutOverheadView(curving({ distanceM, ...over }), CANVAS);
      return (view.ghostBall.cx - view.cueBall.cx) / distanceM;
    };
    expect(pxPerM(0.3)).toBeCloseTo(pxPerM(2.2), 9);
    expect(pxPerM(0.3, { aimOffsetM: 0.2, cutRad: -1.2 })).toBeCloseTo(pxPerM(2.2), 9);
    // A table as long again has half the scale.
    expect(pxPerM(1, { tableLengthM: 5.08 })).toBeCloseTo(pxPerM(1) / 2, 9);
    // From corner to corner of a table twice as long as wide.
    const diagonal = layOutOverheadView(curving({ distanceM: Math.hypot(2.54, 1.27) }), CANVAS);
    expect(diagonal.cueBall.cx).toBeGreaterThan(diagonal.cueBall.r);
  });

  it('makes six millimetres of bow visible', () => {
    const view = layOutOverheadView(curving(), CANVAS);
    expect((view.path[10]?.y ?? 0) - view.cueBall.cy).toBeGreaterThan(3.5);
  });

  it('keeps the balls round and touching whatever the enlargement', () => {
    const { ghostBall, objectBall } = layOutOverheadView(curving(), CANVAS);
    const apart = Math.hypot(objectBall.cx - ghostBall.cx, objectBall.cy - ghostBall.cy);
    expect(apart).toBeCloseTo(ghostBall.r + objectBall.r, 9);
  });

  it('keeps its balls within the strip at any distance and cut', () => {
    const anyScene = fc
      .record({
        distanceM: fc.double({ min: 0.02, max: 2.5, noNaN: true }),
        cutRad: fc.double({ min: -90 * DEG, max: 90 * DEG, noNaN: true }),
      })
      .map(curving);
    fc.assert(
      fc.property(anyScene, (scene) => {
        const view = layOutOverheadView(scene, CANVAS);
        for (const { cx, cy, r } of [view.cueBall, view.ghostBall, view.objectBall]) {
          expect(cx - r).toBeGreaterThanOrEqual(0);
          expect(cx + r).toBeLessThanOrEqual(CANVAS.widthPx);
          expect(cy - r).toBeGreaterThanOrEqual(0);
          expect(cy + r).toBeLessThanOrEqual(CANVAS.heightPx);
        }
        expect(view.target.to.x).toBeLessThanOrEqual(CANVAS.widthPx);
      }),
    );
  });

  it('draws no aim line while there is no answer', () => {
    expect(layOutOverheadView(curving({ aimOffsetM: null, path: [] }), CANVAS).aim).toBeNull();
  });

  describe('how far the cue ball rolls', () => {
    const TALL = { ...CANVAS, heightPx: 76 };
    const runOf = (runLengths: number, reachLengths: number | null = null) => {
      const { runTopY } = layOutOverheadView(curving(), TALL);
      if (runTopY === null) throw new Error('there is no room for the scale');
      return layOutRun({ runLengths, reachLengths }, runTopY, TALL);
    };

    it('stands at its length on an even scale, and at the end for all that rolls farther', () => {
      const [none, one, two, far] = [0, 1, 2, 9].map((lengths) => runOf(lengths).atX);
      expect((two ?? 0) - (none ?? 0)).toBeCloseTo(2 * ((one ?? 0) - (none ?? 0)), 9);
      expect(far).toBe(runOf(1).toX);
    });

    const MARKS = [0.2, 1.2, 3, 5.8].flatMap((at) => [0.1, 1, 2.5, 5.9].map((by) => [by, at]));

    it.each(MARKS)('of %f lengths marks %f, its name clear of handle and edges', (handle, at) => {
      const { reachX, reachLabel, atX } = runOf(handle ?? 0, at);
      expect(reachX).toBeCloseTo(runOf(at ?? 0).atX, 9);
      const { x, anchor, text } = reachLabel ?? { x: 0, anchor: 'start', text: '' };
      const width = textWidthPx(text.length, TALL.textPx);
      const from = anchor === 'start' ? x : x - width;
      expect(from).toBeGreaterThanOrEqual(0);
      expect(from + width).toBeLessThanOrEqual(TALL.widthPx);
      expect(Math.max(atX - from - width, from - atX)).toBeGreaterThan(9);
    });

    it('marks and names it where it is known, and not where not', () => {
      expect(runOf(2).reachX).toBeNull();
      expect(runOf(3, 1.2).reachLabel?.text).toContain('reaches');
    });

    it('gives its room to the lines where the strip is low', () => {
      expect(layOutOverheadView(curving(), CANVAS).runTopY).toBeNull();
    });
  });
});
