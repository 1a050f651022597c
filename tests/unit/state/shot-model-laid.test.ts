import { describe, expect, it } from 'vitest';
import { DEFAULT_KIT } from '../../../src/engine/kit/kit';
import { answerTo, openShot } from './open-shot';

/** A way out of Choose: it lies across the table. */
const LAID = { distanceM: 1, cutRad: 0.3, headingRad: 1.5 };

describe('how a shot lies on the table', () => {
  it.each([
    ['side', 0.2],
    ['height', 0.2],
    ['elevation', 5],
    ['speed', 3],
    ['mouth', 120],
  ] as const)('stays with another %s, which moves no ball', (name, figure) => {
    const { model } = openShot(LAID);
    const before = model.fields[name].value.figure;
    model.setFigure(name, figure);
    expect(model.fields[name].value.figure).not.toBeCloseTo(before, 3);
    expect(model.shot.value.headingRad).toBe(1.5);
    model.setTip(0.1, 0.1);
    expect(model.shot.value.headingRad).toBe(1.5);
  });

  it.each([
    ['distance', '1.2'],
    ['cut', '20'],
    ['pocket', '0.65'],
  ] as const)('is not said any more once the %s is given by hand', (name, text) => {
    const { model } = openShot(LAID);
    model.typeIn(name, text);
    expect(model.shot.value.headingRad).toBeNull();
    model.undo();
    expect(model.shot.value).toMatchObject(LAID);
    model.nudge(name, 1);
    expect(model.shot.value.headingRad).toBeNull();
  });

  it('is not said of a cut to the other side', () => {
    const { model } = openShot(LAID);
    model.setCutSign(1);
    expect(model.shot.value.headingRad).toBe(1.5);
    model.setCutSign(-1);
    expect(model.shot.value.headingRad).toBeNull();
  });

  it('stays when what is typed is what stands there, or makes no shot', () => {
    const { model } = openShot(LAID);
    model.typeIn('distance', '1');
    model.typeIn('distance', 'far');
    expect(model.shot.value).toMatchObject(LAID);
  });

  it('comes back when a drag is taken back while it lasts', () => {
    const { model } = openShot(LAID);
    model.beginGesture();
    model.setFigure('distance', 1.1);
    model.setFigure('distance', 1.3);
    model.endGesture(true);
    expect(model.shot.value).toMatchObject(LAID);
    expect(model.canUndo.value).toBe(false);
  });

  it('comes with a shot that was worked out elsewhere, and goes when that is taken back', () => {
    const { model, desk } = openShot({ headingRad: null });
    const asked = { shot: { ...desk.shot.value, headingRad: -0.4 }, pocket: desk.pocket.value };
    model.ask(asked, { ball: 3, pocket: 'far-left' });
    expect(model.shot.value.headingRad).toBe(-0.4);
    model.undo();
    expect(model.shot.value.headingRad).toBeNull();
  });

  it('says of what ball and pocket it was asked, until it lies otherwise', () => {
    const { model, desk } = openShot({ headingRad: null });
    expect(model.laid.value).toBeNull();
    const asked = { shot: { ...desk.shot.value, headingRad: -0.4 }, pocket: desk.pocket.value };
    model.ask(asked, { ball: 3, pocket: 'far-left' });
    expect(model.laid.value).toEqual({ ball: 3, pocket: 'far-left' });
    model.nudge('speed', 1);
    expect(model.laid.value).toEqual({ ball: 3, pocket: 'far-left' });
    model.nudge('cut', 1);
    expect(model.laid.value).toBeNull();
    model.undo();
    expect(model.laid.value).toEqual({ ball: 3, pocket: 'far-left' });
    model.nudge('distance', 1);
    expect(model.laid.value).toBeNull();
  });

  it('is held with the shot, and exchanged with it', () => {
    const { model, desk } = openShot(LAID);
    model.hold();
    model.setFigure('distance', 1.4);
    expect(desk.heldShot.value?.headingRad).toBe(1.5);
    model.swap();
    expect(model.shot.value.headingRad).toBe(1.5);
    expect(desk.heldShot.value?.headingRad).toBeNull();
    model.undo();
    expect(model.shot.value.headingRad).toBeNull();
    expect(desk.heldShot.value?.headingRad).toBe(1.5);
  });

  it('gives the held shot the bed as it sees it, which is solved once', () => {
    const solved: number[] = [];
    const { model } = openShot(LAID, undefined, {
      kitAlong: (headingRad) => ({
        ...DEFAULT_KIT,
        bedSlope: { alongM_per_M: headingRad ?? 0, rightM_per_M: 0 },
      }),
      solve(shot, kit) {
        if (kit.bedSlope.alongM_per_M !== 0) solved.push(kit.bedSlope.alongM_per_M);
        return answerTo(shot);
      },
    });
    model.hold();
    for (const distance of [1.2, 1.3, 1.4]) {
      model.setFigure('distance', distance);
      expect(model.comparison.value?.result.ok).toBe(true);
    }
    expect(solved).toEqual([1.5]);
  });
});
