import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Canvas, Label } from '../../../src/diagram/canvas';
import { textWidthPx } from '../../../src/diagram/canvas';
import type { ShooterScene } from '../../../src/diagram/shooter-scene';
import { layOutShooterView, type ShooterView } from '../../../src/diagram/shooter-view';

const RADIUS_M = 0.028575;
const CANVAS: Canvas = { widthPx: 366, heightPx: 240, textPx: 13 };
const DEG = Math.PI / 180;
const TIP = { side: -0.25, height: 0, limit: 0.5, domeRadii: 1 / 3, widthRadii: 0.45 };

/** A scene with the readings that one aim line gives at both balls. */
function sceneOf(
  distanceM: number,
  cutRad: number,
  aimRad: number,
  lead: ShooterScene['lead'],
): ShooterScene {
  const toObjectM = distanceM + 2 * RADIUS_M * Math.cos(cutRad);
  const aimOffsetM = distanceM * Math.tan(aimRad);
  const aimOnObjectBallM = toObjectM * Math.tan(aimRad) - 2 * RADIUS_M * Math.sin(cutRad);
  return {
    ballRadiusM: RADIUS_M,
    distanceM,
    cutRad,
    lead,
    marks: {
      aimOffsetM,
      aimOnObjectBallM,
      stickOffsetM: aimOffsetM - 0.015,
      stickOnObjectBallM: aimOnObjectBallM - 0.015,
    },
    bandRad: null,
    sureRad: null,
    held: null,
    tip: TIP,
  };
}

const scenes = fc
  .record({
    distanceM: fc.double({ min: 0.2, max: 4, noNaN: true }),
    cutRad: fc.double({ min: -80 * DEG, max: 80 * DEG, noNaN: true }),
    offsetM: fc.double({ min: -0.5, max: 0.5, noNaN: true }),
    lead: fc.constantFrom('object-ball' as const, 'ghost-ball' as const),
  })
  .map(({ distanceM, cutRad, offsetM, lead }) =>
    sceneOf(distanceM, cutRad, Math.atan(offsetM / distanceM), lead),
  );

/** Where each name that is written begins and ends. */
function namesOf({ objectLabel, ghostLabel, aim, stick }: ShooterView) {
  const names: readonly (readonly [Label | null | undefined, number, boolean])[] = [
    [objectLabel, 6, true],
    [ghostLabel, 5, true],
    [aim?.label, 8, false],
    [stick?.label, stick?.isShort ? 3 : 13, false],
  ];
  return names.flatMap(([label, letters, isBall]) => {
    if (!label) return [];
    const width = textWidthPx(letters, CANVAS.textPx);
    const from = label.anchor === 'start' ? label.x : label.x - width;
    return [{ from, to: from + width, isBall }];
  });
}

describe('the shooter’s view', () => {
  it('shows the aim line crossing the object ball where the answer says', () => {
    const scene = sceneOf(1, 20 * DEG, -1 * DEG, 'object-ball');
    const { aim, objectBall } = layOutShooterView(scene, CANVAS);
    const ballsRight = ((aim?.x ?? Number.NaN) - objectBall.cx) / (2 * objectBall.r);
    expect(ballsRight).toBeCloseTo((scene.marks?.aimOnObjectBallM ?? 0) / (2 * RADIUS_M), 9);
  });

  it('is true to the ghost ball with the same mark', () => {
    fc.assert(
      fc.property(scenes, (scene) => {
        const { aim, ghostBall } = layOutShooterView(scene, CANVAS);
        const ballsRight = ((aim?.x ?? Number.NaN) - ghostBall.cx) / (2 * ghostBall.r);
        expect(ballsRight).toBeCloseTo((scene.marks?.aimOffsetM ?? 0) / (2 * RADIUS_M), 6);
      }),
    );
  });

  it('puts the object ball on the side it is cut to, half hidden at a half-ball hit', () => {
    const right = layOutShooterView({ ...sceneOf(2, 30 * DEG, 0, 'object-ball') }, CANVAS);
    expect(right.objectBall.cx - right.ghostBall.cx).toBeCloseTo(right.objectBall.r, 9);
    const left = layOutShooterView({ ...sceneOf(2, -30 * DEG, 0, 'object-ball') }, CANVAS);
    expect(left.ghostBall.cx - left.objectBall.cx).toBeCloseTo(left.objectBall.r, 9);
  });

  it('keeps balls and marks within the canvas however far off the aim is', () => {
    fc.assert(
      fc.property(scenes, (scene) => {
        const { objectBall, ghostBall, aim, stick } = layOutShooterView(scene, CANVAS);
        for (const { cx, cy, r } of [objectBall, ghostBall]) {
          expect(cx - r).toBeGreaterThanOrEqual(-1e-6);
          expect(cx + r).toBeLessThanOrEqual(CANVAS.widthPx + 1e-6);
          expect(cy - r).toBeGreaterThanOrEqual(0);
          expect(cy + r).toBeLessThanOrEqual(CANVAS.heightPx);
        }
        for (const mark of [aim, stick]) {
          expect(mark?.x).toBeGreaterThan(0);
          expect(mark?.x).toBeLessThan(CANVAS.widthPx);
        }
      }),
    );
  });

  it('tells its scale once it has widened to hold an aim three balls off', () => {
    const wide = { ...CANVAS, heightPx: 400 };
    const near = layOutShooterView(sceneOf(1.5, 20 * DEG, 0, 'object-ball'), wide);
    expect(near.scaleNote).toBeNull();
    const far = layOutShooterView(
      sceneOf(1.5, 20 * DEG, Math.atan(-0.171 / 1.5), 'object-ball'),
      wide,
    );
    expect(far.scaleNote).not.toBeNull();
    expect(far.ballsAcross).toBeGreaterThan(4);
    expect(far.ballsAcross).toBeCloseTo(CANVAS.widthPx / (2 * far.objectBall.r), 9);
  });

  it('writes no name off a canvas that very large text leaves little room in', () => {
    const large = { ...CANVAS, textPx: 26 };
    const straight = sceneOf(1.5, 0, 0, 'object-ball');
    const marks = straight.marks && { ...straight.marks, stickOffsetM: 0, stickOnObjectBallM: 0 };
    const { aim } = layOutShooterView({ ...straight, marks }, large);
    const width = textWidthPx('aim line'.length, large.textPx);
    const { x = Number.NaN, anchor } = aim?.label ?? {};
    expect(anchor === 'end' ? x - width : x).toBeGreaterThanOrEqual(0);
    expect(anchor === 'end' ? x : x + width).toBeLessThanOrEqual(large.widthPx);
  });

  it('writes no name off the canvas', () => {
    fc.assert(
      fc.property(scenes, (scene) => {
        for (const { from, to } of namesOf(layOutShooterView(scene, CANVAS))) {
          expect(from).toBeGreaterThanOrEqual(-1e-6);
          expect(to).toBeLessThanOrEqual(CANVAS.widthPx + 1e-6);
        }
      }),
    );
  });

  it('writes no ball’s name across a mark', () => {
    fc.assert(
      fc.property(scenes, (scene) => {
        const view = layOutShooterView(scene, CANVAS);
        const marksX = [view.aim?.x ?? -1, view.stick?.x ?? -1];
        for (const { from, to } of namesOf(view).filter(({ isBall }) => isBall)) {
          expect(marksX.filter((x) => x > from && x < to)).toEqual([]);
        }
      }),
    );
  });

  it('names the cue in short at an edge, on its own side of the aim line', () => {
    const farLeft = sceneOf(1.5, 20 * DEG, Math.atan(-0.055 / 1.5), 'object-ball');
    const { stick, aim } = layOutShooterView(farLeft, { ...CANVAS, widthPx: 300 });
    expect(stick?.isShort).toBe(true);
    expect(stick?.label.x).toBeLessThan(stick?.x ?? 0);
    expect(aim?.label.x).toBeGreaterThan(aim?.x ?? 0);
  });

  it('names aim and cue on either side of a line they share, and draws them to be told apart', () => {
    const scene = sceneOf(1, 0, 0, 'object-ball');
    const marks = scene.marks && { ...scene.marks, stickOffsetM: 0, stickOnObjectBallM: 0 };
    const { aim, stick } = layOutShooterView({ ...scene, marks }, CANVAS);
    expect(stick?.x).toBe(aim?.x);
    expect(stick?.isClose).toBe(true);
    expect([aim?.label.anchor, stick?.label.anchor].sort()).toEqual(['end', 'start']);
    expect(layOutShooterView(scene, CANVAS).stick?.isClose).toBe(false);
  });

  it('keeps the ghost ball’s handle off the lines of aim and cue', () => {
    // A ring of 9.5 px with its edge, and half of a line.
    const touchesPx = 9.5 + 0.75 + 1.5;
    fc.assert(
      fc.property(scenes, (scene) => {
        const { ghostGrip, aim, stick } = layOutShooterView(scene, CANVAS);
        for (const mark of [aim, stick]) {
          expect(Math.abs(ghostGrip.x - (mark?.x ?? Number.NaN))).toBeGreaterThan(touchesPx);
        }
      }),
      { numRuns: 400 },
    );
  });

  it('writes the bands’ names on no other name, on the canvas, and clear of the handle', () => {
    const bands = { bandRad: { low: -0.01, high: 0.01 }, sureRad: { low: -0.01, high: 0.01 } };
    let written = 0;
    fc.assert(
      fc.property(scenes, fc.integer({ min: 90, max: 320 }), (scene, heightPx) => {
        const canvas = { ...CANVAS, heightPx };
        const { names, ghostGrip } = layOutShooterView({ ...scene, ...bands }, canvas);
        const isBand = (part: string) => part === 'band' || part === 'haze';
        for (const { part, box } of names.filter((name) => isBand(name.part))) {
          written += 1;
          expect(box.fromX).toBeGreaterThanOrEqual(0);
          expect(box.toX).toBeLessThanOrEqual(canvas.widthPx);
          const { x, y } = ghostGrip;
          const isOnGrip = x > box.fromX && x < box.toX && y > box.fromY && y < box.toY;
          expect(isOnGrip).toBe(false);
          for (const { box: other } of names.filter((name) => name.part !== part)) {
            const across = Math.min(box.toX, other.toX) - Math.max(box.fromX, other.fromX);
            const down = Math.min(box.toY, other.toY) - Math.max(box.fromY, other.fromY);
            // Lines of one block of text may touch.
            expect(Math.min(across, down)).toBeLessThanOrEqual(1e-6);
          }
        }
      }),
    );
    expect(written).toBeGreaterThan(0);
  });

  it('names the bands in a picture 132 px high', () => {
    const bands = { bandRad: { low: -0.01, high: 0.01 }, sureRad: { low: -0.01, high: 0.01 } };
    const scene = { ...sceneOf(1, 24 * DEG, -1 * DEG, 'object-ball'), ...bands };
    const { bandLabels } = layOutShooterView(scene, { ...CANVAS, heightPx: 132 });
    expect(bandLabels).toHaveLength(2);
  });

  it('leaves the object ball in the middle while the ghost ball is dragged', () => {
    for (const cut of [-60, -10, 0, 35, 70]) {
      const scene = { ...sceneOf(1, cut * DEG, 0, 'object-ball'), marks: null };
      const { objectBall, ghostBall, pxPerM } = layOutShooterView(scene, CANVAS);
      expect(objectBall.cx).toBe(CANVAS.widthPx / 2);
      // As far beside it as 2R times the sine of the cut.
      const besideM = -2 * RADIUS_M * Math.sin(cut * DEG);
      expect(ghostBall.cx - objectBall.cx).toBeCloseTo(besideM * pxPerM, 9);
    }
  });

  it('gives its height to the far balls alone where a near one would come out too small', () => {
    const low = { ...CANVAS, heightPx: 90 };
    expect(layOutShooterView(sceneOf(1, 0, 0, 'object-ball'), low).near).toBeNull();
    expect(layOutShooterView(sceneOf(1, 0, 0, 'object-ball'), CANVAS).near).not.toBeNull();
  });

  it('lets each far ball have about a third of the height that names and figures leave', () => {
    const { objectBall } = layOutShooterView(sceneOf(2, 20 * DEG, 0, 'object-ball'), CANVAS);
    expect((2 * objectBall.r) / CANVAS.heightPx).toBeGreaterThan(0.3);
  });

  it('draws the haze as wide as the aim is unsure, about the aim', () => {
    fc.assert(
      fc.property(scenes, fc.double({ min: 1e-4, max: 0.005, noNaN: true }), (scene, sdRad) => {
        const aimRad = Math.atan((scene.marks?.aimOffsetM ?? 0) / scene.distanceM);
        const sureRad = { low: aimRad - sdRad, high: aimRad + sdRad };
        const { haze, aim, pxPerM } = layOutShooterView({ ...scene, sureRad }, CANVAS);
        const x = aim?.x ?? Number.NaN;
        fc.pre((haze?.fromX ?? 0) > 0 && (haze?.toX ?? 0) < CANVAS.widthPx);
        const toBallM = scene.distanceM + 2 * RADIUS_M * Math.cos(scene.cutRad);
        const sdPx = toBallM * (Math.tan(aimRad + sdRad) - Math.tan(aimRad)) * pxPerM;
        expect((haze?.toX ?? 0) - x).toBeCloseTo(sdPx, 3);
        expect(x - (haze?.fromX ?? 0)).toBeCloseTo(sdPx, 0);
      }),
    );
  });

  it('draws the balls alone while there is no answer', () => {
    const view = layOutShooterView({ ...sceneOf(1, 0, 0, 'ghost-ball'), marks: null }, CANVAS);
    expect(view.aim).toBeNull();
    expect(view.ruler.aimX).toBeNull();
    expect(view.objectBall.r).toBeGreaterThan(20);
  });

  it('does not let a ghost ball close to the eye dwarf the object ball', () => {
    const { ghostBall, objectBall } = layOutShooterView(sceneOf(0.02, 0, 0, 'object-ball'), CANVAS);
    expect(ghostBall.r / objectBall.r).toBeCloseTo(1.3, 9);
  });

  it('draws the aims that still go where an aim mark of each would stand', () => {
    fc.assert(
      fc.property(scenes, fc.double({ min: -0.01, max: 0.01, noNaN: true }), (scene, offRad) => {
        const aimRad = Math.atan((scene.marks?.aimOffsetM ?? 0) / scene.distanceM);
        const bandRad = { low: aimRad, high: aimRad + Math.abs(offRad) };
        const { band, aim } = layOutShooterView({ ...scene, bandRad }, CANVAS);
        expect(band?.fromX).toBeCloseTo(aim?.x ?? Number.NaN, 6);
        const other = sceneOf(scene.distanceM, scene.cutRad, bandRad.high, scene.lead);
        const scaled = layOutShooterView({ ...other, bandRad }, CANVAS);
        expect(scaled.band?.toX).toBeCloseTo(scaled.aim?.x ?? Number.NaN, 6);
      }),
    );
  });

  it('cuts a wide band off at its edges, and draws none where none is known', () => {
    const scene = sceneOf(0.5, 0, 0, 'object-ball');
    const wide = { ...scene, bandRad: { low: -90 * DEG, high: 90 * DEG } };
    expect(layOutShooterView(wide, CANVAS).band).toEqual({ fromX: 0, toX: CANVAS.widthPx });
    expect(layOutShooterView(scene, CANVAS).band).toBeNull();
  });
});
