import { describe, expect, it } from 'vitest';
import { POCKET_RANGES } from '../../../src/store/record-ranges';
import { openShot } from './open-shot';

describe('the pocket', () => {
  it('is shown and taken in the units chosen', () => {
    const { model, desk } = openShot({}, { distanceUnit: 'diamonds', lengthUnit: 'in' });
    // A nine-foot table, 2.54 m from nose to nose, has eight diamonds; an inch is 25.4 mm.
    desk.setPocket({ distanceM: 0.635, mouthM: 0.127 });
    expect(model.fields.pocket.value.figure).toBeCloseTo(2, 9);
    expect(model.fields.mouth.value.figure).toBeCloseTo(5, 9);
    model.setFigure('pocket', 4);
    model.setFigure('mouth', 4.5);
    expect(desk.pocket.value.distanceM).toBeCloseTo(1.27, 9);
    expect(desk.pocket.value.mouthM).toBeCloseTo(0.1143, 9);
  });

  it('goes to the next step when nudged', () => {
    const { model, desk } = openShot();
    desk.setPocket({ distanceM: 0.8, mouthM: 0.1165 });
    model.nudge('pocket', 1);
    model.nudge('mouth', -1);
    expect(desk.pocket.value.distanceM).toBeCloseTo(0.81, 9);
    expect(desk.pocket.value.mouthM).toBeCloseTo(0.116, 9);
  });

  it.each([
    ['pocket', 'distanceM'],
    ['mouth', 'mouthM'],
  ] as const)('is held to its range: %s', (field, key) => {
    const { model, desk } = openShot({}, { lengthUnit: 'in', distanceUnit: 'in' });
    model.setFigure(field, -1e6);
    expect(desk.pocket.value[key]).toBe(POCKET_RANGES[key].min);
    model.setFigure(field, 1e6);
    expect(desk.pocket.value[key]).toBe(POCKET_RANGES[key].max);
  });

  it('keeps its last good number beside a bad one, and leaves the aim’s answer standing', () => {
    const { model, desk } = openShot();
    const before = desk.pocket.value;
    model.typeIn('mouth', '30');
    expect(model.problems.mouth.value?.message).toBe('The least is 85 mm.');
    expect(model.hasPocketProblem.value).toBe(true);
    expect(model.stale.value).toBe(false);
    expect(desk.pocket.value).toBe(before);
    model.typeIn('mouth', '120');
    expect(model.hasPocketProblem.value).toBe(false);
    expect(desk.pocket.value).toEqual({ ...before, mouthM: 0.12 });
  });

  it('is taken back in its turn among changes of the shot', () => {
    const { model, desk } = openShot({ speedMps: 1 });
    const before = desk.pocket.value;
    model.setFigure('speed', 2);
    model.setFigure('pocket', 1.5);
    model.setFigure('speed', 3);
    model.undo();
    expect(model.shot.value.speedMps).toBe(2);
    expect(desk.pocket.value.distanceM).toBe(1.5);
    model.undo();
    expect(desk.pocket.value).toEqual(before);
    expect(model.shot.value.speedMps).toBe(2);
    model.undo();
    expect(model.shot.value.speedMps).toBe(1);
    expect(model.canUndo.value).toBe(false);
  });

  it('set to what it is already is no change', () => {
    const { model } = openShot();
    model.setFigure('mouth', model.fields.mouth.value.figure);
    expect(model.canUndo.value).toBe(false);
  });

  it('stays where it is when the held shot is taken up again', () => {
    const { model, desk } = openShot();
    model.hold();
    model.setFigure('pocket', 2);
    model.setFigure('speed', 3);
    model.swap();
    expect(desk.pocket.value.distanceM).toBe(2);
  });
});
