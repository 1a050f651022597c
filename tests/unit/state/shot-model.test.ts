import { describe, expect, it, vi } from 'vitest';
import type { SolveAim } from '../../../src/engine/direct/shot';
import { answerTo, fakeSolve, openShot } from './open-shot';

describe('the answer', () => {
  it('is the engine’s to the shot and kit on the desk', () => {
    const solve = vi.fn<SolveAim>(fakeSolve);
    const { model, desk, kit } = openShot({}, {}, { solve });
    expect(model.result.value).toEqual(answerTo(desk.shot.value));
    expect(solve).toHaveBeenLastCalledWith(desk.shot.value, kit.value);
  });

  it('follows the kit', () => {
    const solve: SolveAim = (shot, { massRatio }) => ({ ...answerTo(shot), aimRad: massRatio });
    const { model, kit } = openShot({}, {}, { solve });
    kit.value = { ...kit.value, massRatio: 40 };
    expect(model.lastAnswer.value?.answer.aimRad).toBe(40);
    expect(model.lastAnswer.value?.kit.massRatio).toBe(40);
  });

  it('stays, marked stale, when the next question is refused', () => {
    const { model } = openShot({ speedMps: 1 });
    const before = model.lastAnswer.value;
    expect(model.stale.value).toBe(false);
    model.setFigure('speed', 0.05);
    expect(model.result.value).toMatchObject({ ok: false, reason: 'stops-short' });
    expect(model.lastAnswer.value).toBe(before);
    expect(model.stale.value).toBe(true);
    model.setFigure('speed', 1);
    expect(model.stale.value).toBe(false);
  });

  it('is none where the first question is refused', () => {
    const { model } = openShot({ speedMps: 0.05 });
    expect(model.lastAnswer.value).toBeNull();
    expect(model.path.value).toEqual([]);
    expect(model.warnings.value).toEqual([]);
    expect(model.uncorrected.value).toBeNull();
  });

  it('brings the cue ball’s way to the object ball with it', () => {
    const { model } = openShot({ distanceM: 1.5 });
    expect(model.path.value.at(-1)).toEqual({ xM: 0, yM: 1.5 });
  });

  it('tells where the object ball would go with the cue on the straight line', () => {
    const play = vi.fn((shot: Parameters<SolveAim>[0]) => answerTo(shot));
    const { model } = openShot({}, {}, { play });
    expect(model.uncorrected.value?.ok).toBe(true);
    expect(play.mock.lastCall).toEqual([model.shot.value, expect.anything(), 0]);
  });
});

describe('a shot worked out elsewhere', () => {
  it('is asked with its pocket, in place of what was typed badly, and taken back at once', () => {
    const { model } = openShot({ distanceM: 1 });
    model.typeIn('speed', 'fast');
    const before = model.shot.value;
    const shot = { ...before, distanceM: 0.7, side: 0.2 };
    const pocket = { distanceM: 0.4, mouthM: 0.1 };
    model.ask({ shot, pocket }, { ball: 3, pocket: 'far-left' });
    expect(model.shot.value).toEqual(shot);
    expect(model.problems.speed.value).toBeNull();
    expect(model.fields.mouth.value.figure).toBeCloseTo(100, 9);
    model.undo();
    expect(model.shot.value).toEqual(before);
    expect(model.fields.mouth.value.figure).toBeCloseTo(116, 9);
    expect(model.canUndo.value).toBe(false);
  });
});

describe('undo', () => {
  it('takes changes back one by one, as far as there are any', () => {
    const { model } = openShot({ speedMps: 1, distanceM: 1 });
    expect(model.canUndo.value).toBe(false);
    model.setFigure('speed', 2);
    model.setFigure('distance', 2);
    model.undo();
    expect(model.shot.value).toMatchObject({ speedMps: 2, distanceM: 1 });
    model.undo();
    expect(model.shot.value).toMatchObject({ speedMps: 1, distanceM: 1 });
    expect(model.canUndo.value).toBe(false);
    model.undo();
    expect(model.shot.value).toMatchObject({ speedMps: 1, distanceM: 1 });
  });

  it('takes a whole gesture back at once', () => {
    const { model } = openShot({ speedMps: 1 });
    model.beginGesture();
    for (let i = 0; i < 5; i++) model.nudge('speed', 1);
    model.endGesture();
    model.nudge('speed', 1);
    model.undo();
    expect(model.shot.value.speedMps).toBeCloseTo(1.5, 9);
    model.undo();
    expect(model.shot.value.speedMps).toBe(1);
  });

  it('forgets a gesture that was taken away', () => {
    const { model } = openShot({ speedMps: 1 });
    model.beginGesture();
    model.nudge('speed', 1);
    model.endGesture(true);
    expect(model.shot.value.speedMps).toBe(1);
    expect(model.canUndo.value).toBe(false);
  });

  it('takes back what was typed while the field keeps the keyboard, and then what follows', () => {
    const { model } = openShot({ speedMps: 1 });
    model.nudge('speed', 1);
    model.beginGesture();
    model.typeIn('speed', '2');
    model.typeIn('speed', '2.5');
    expect(model.canUndo.value).toBe(true);
    model.undo();
    expect(model.shot.value.speedMps).toBeCloseTo(1.1, 9);
    model.typeIn('speed', '3');
    model.endGesture();
    model.undo();
    expect(model.shot.value.speedMps).toBeCloseTo(1.1, 9);
    model.undo();
    expect(model.shot.value.speedMps).toBe(1);
  });

  it('has nothing to take back after a nudge against the end of the range', () => {
    const { model } = openShot({ speedMps: 13 });
    model.nudge('speed', 1);
    expect(model.canUndo.value).toBe(false);
  });

  it('has nothing to take back after a gesture that changed nothing', () => {
    const { model } = openShot();
    model.beginGesture();
    model.endGesture(true);
    expect(model.canUndo.value).toBe(false);
  });
});

describe('redo', () => {
  it('makes again what was taken back, until something else is changed', () => {
    const { model } = openShot();
    model.setFigure('speed', 2.5);
    model.undo();
    expect(model.canRedo.value).toBe(true);
    model.redo();
    expect(model.shot.value.speedMps).toBe(2.5);
    expect(model.canRedo.value).toBe(false);
    model.undo();
    model.setFigure('distance', 1);
    expect(model.canRedo.value).toBe(false);
    model.redo();
    expect(model.shot.value.distanceM).toBe(1);
  });

  it('exchanges the shots again whose exchange was taken back', () => {
    const { model, desk } = openShot({ speedMps: 1.5 });
    model.hold();
    model.setFigure('speed', 3);
    model.swap();
    model.undo();
    expect([model.shot.value.speedMps, desk.heldShot.value?.speedMps]).toEqual([3, 1.5]);
    model.redo();
    expect([model.shot.value.speedMps, desk.heldShot.value?.speedMps]).toEqual([1.5, 3]);
  });
});
