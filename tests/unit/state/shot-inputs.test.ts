import { describe, expect, it } from 'vitest';
import { ballToBallGapM } from '../../../src/units/ball-to-ball';
import { openShot } from './open-shot';

const DEG = Math.PI / 180;

describe('a figure', () => {
  it('is shown and taken in the unit chosen', () => {
    const { model, desk } = openShot({ distanceM: 0.635 }, { distanceUnit: 'diamonds' });
    expect(model.fields.distance.value.figure).toBeCloseTo(2, 9);
    desk.setPreference('distanceUnit', 'in');
    expect(model.fields.distance.value.figure).toBeCloseTo(25, 9);
    model.setFigure('distance', 50);
    expect(model.shot.value.distanceM).toBeCloseTo(1.27, 9);
  });

  it('of speed is taken in lengths of the table, however many m/s those are on its cloth', () => {
    const { model, kit } = openShot({}, { speedUnit: 'lengths' });
    model.typeIn('speed', '2 lengths');
    expect(model.fields.speed.value.figure).toBeCloseTo(2, 8);
    const onThisMps = model.shot.value.speedMps;
    // What is left at the second cushion is nothing, at the first enough for a length, and so on.
    expect(onThisMps).toBeGreaterThan(Math.sqrt(2 * 0.01 * 9.80665 * 2 * 2.48));
    kit.value = { ...kit.value, rollFriction: 0.016 };
    expect(model.fields.speed.value.figure).toBeLessThan(2);
    model.setFigure('speed', 2);
    expect(model.shot.value.speedMps).toBeGreaterThan(onThisMps);
  });

  it('goes to the next step when nudged, and a long one when coarse', () => {
    const { model } = openShot({ speedMps: 1.23 });
    model.nudge('speed', 1);
    expect(model.shot.value.speedMps).toBeCloseTo(1.3, 9);
    model.nudge('speed', 1, true);
    expect(model.shot.value.speedMps).toBeCloseTo(1.5, 9);
    model.nudge('speed', -1, true);
    expect(model.shot.value.speedMps).toBeCloseTo(1, 9);
  });

  it.each([
    ['distance', 'distanceM', 0.005, 4.1],
    ['speed', 'speedMps', 0.02, 13],
    ['elevation', 'elevationRad', 0, 75 * DEG],
  ] as const)('of %s is held to what the engine accepts', (field, key, least, most) => {
    const { model } = openShot();
    model.setFigure(field, -1e6);
    expect(model.shot.value[key]).toBeCloseTo(least, 9);
    model.setFigure(field, 1e6);
    expect(model.shot.value[key]).toBeCloseTo(most, 9);
  });

  it('from ball to ball leaves the balls where they lie while the cut changes', () => {
    const { model, kit } = openShot({ distanceM: 0.8 }, { distanceFrom: 'ball-to-ball' });
    const gapM = () => {
      const { distanceM, cutRad } = model.shot.value;
      const gap = ballToBallGapM(distanceM, cutRad, kit.value.ballRadiusM);
      return gap.ok ? gap.value : Number.NaN;
    };
    const before = gapM();
    const shownBefore = model.fields.distance.value.figure;
    model.setFigure('cut', 55);
    expect(gapM()).toBeCloseTo(before, 12);
    expect(model.fields.distance.value.figure).toBeCloseTo(shownBefore, 12);
    expect(model.shot.value.distanceM).not.toBeCloseTo(0.8, 3);
  });

  it('from the ghost ball keeps its distance while the cut changes', () => {
    const { model } = openShot({ distanceM: 0.8 });
    model.setFigure('cut', 55);
    expect(model.shot.value).toMatchObject({ distanceM: 0.8 });
    expect(model.shot.value.cutRad).toBeCloseTo(55 * DEG, 12);
  });
});

describe('the cut’s side', () => {
  it('turns the cut over', () => {
    const { model } = openShot({ cutRad: 20 * DEG });
    model.setCutSign(-1);
    expect(model.shot.value.cutRad).toBeCloseTo(-20 * DEG, 12);
    expect(model.fields.cut.value.figure).toBeCloseTo(20, 12);
  });

  it('is remembered over a straight shot', () => {
    const { model } = openShot({ cutRad: -20 * DEG });
    model.setFigure('cut', 0);
    expect(Object.is(model.shot.value.cutRad, 0)).toBe(true);
    expect(model.cutSign.value).toBe(-1);
    model.setFigure('cut', 10);
    expect(model.shot.value.cutRad).toBeCloseTo(-10 * DEG, 12);
  });

  it('can be chosen before there is a cut', () => {
    const { model } = openShot({ cutRad: 0 });
    model.setCutSign(-1);
    model.nudge('cut', 1);
    expect(model.shot.value.cutRad).toBeCloseTo(-1 * DEG, 12);
  });
});

describe('the tip', () => {
  it('is held to the miscue limit when placed, in the direction asked for', () => {
    const { model } = openShot();
    model.setTip(0.6, -0.8);
    expect(model.shot.value.side).toBeCloseTo(0.3, 12);
    expect(model.shot.value.height).toBeCloseTo(-0.4, 12);
  });

  it('stops at the limit when nudged', () => {
    const { model } = openShot({ side: 0.49 });
    model.nudge('side', 1);
    model.nudge('side', 1);
    expect(model.shot.value.side).toBe(0.5);
  });
});

describe('something typed', () => {
  it('is taken with a comma, a fraction or the unit behind it', () => {
    const { model } = openShot({}, { tipUnit: 'radii' });
    model.typeIn('distance', '1,25 m');
    expect(model.shot.value.distanceM).toBeCloseTo(1.25, 12);
    model.typeIn('side', '-1/4');
    expect(model.shot.value.side).toBe(-0.25);
    model.typeIn('height', '1/4 R low');
    expect(model.shot.value.height).toBe(-0.25);
  });

  it('that is no number is told, and leaves the last good answer standing', () => {
    const { model } = openShot({ distanceM: 1.1 });
    const before = model.lastAnswer.value;
    model.typeIn('distance', 'far');
    expect(model.problems.distance.value).toEqual({
      text: 'far',
      message: expect.stringContaining('figures'),
    });
    expect(model.shot.value.distanceM).toBe(1.1);
    expect(model.lastAnswer.value).toBe(before);
    expect(model.stale.value).toBe(true);
  });

  it('out of range is told with the bound', () => {
    const { model } = openShot();
    model.typeIn('speed', '99');
    expect(model.problems.speed.value?.message).toContain('13');
    model.typeIn('cut', '-5');
    expect(model.problems.cut.value?.message).toContain('0');
  });

  it('badly is forgotten once the number is set another way, or on request', () => {
    const { model } = openShot();
    model.typeIn('speed', 'x');
    model.nudge('speed', 1);
    expect(model.problems.speed.value).toBeNull();
    model.typeIn('speed', 'x');
    model.forgetProblem('speed');
    expect(model.stale.value).toBe(false);
  });

  it('badly is forgotten when the last change is taken back', () => {
    const { model } = openShot({ speedMps: 1 });
    model.nudge('speed', 1);
    model.typeIn('speed', 'x');
    model.undo();
    expect(model.shot.value.speedMps).toBe(1);
    expect(model.stale.value).toBe(false);
  });

  it('beyond the miscue limit goes to the engine, which knows why not', () => {
    const { model } = openShot({}, { tipUnit: 'radii' });
    model.typeIn('side', '0.7');
    expect(model.problems.side.value).toBeNull();
    expect(model.shot.value.side).toBe(0.7);
  });
});

describe('a cut with its side', () => {
  it('changes both at once, and through straight keeps the side it last had', () => {
    const { model } = openShot({ cutRad: 0.3 });
    model.setCut(-0.2);
    expect(model.shot.value.cutRad).toBe(-0.2);
    expect(model.cutSign.value).toBe(-1);
    model.setCut(0);
    expect(model.shot.value.cutRad).toBe(0);
    expect(model.cutSign.value).toBe(-1);
  });

  it('leaves the balls where they lie for who measures between them', () => {
    const { model } = openShot({ cutRad: 0.3, distanceM: 1 }, { distanceFrom: 'ball-to-ball' });
    const before = model.fields.distance.value.figure;
    model.setCut(-0.9);
    expect(model.fields.distance.value.figure).toBeCloseTo(before, 9);
  });
});

describe('the tip in tips', () => {
  // A radius moves the cue’s axis by (28.575 + 9.5) mm: 2.929 tips of 13 mm.
  it('is typed and stepped in tips and kept as a share of the radius', () => {
    const { model } = openShot({ side: 0 });
    model.typeIn('side', '1 tip left');
    expect(model.shot.value.side).toBeCloseTo(-13 / 38.075, 9);
    model.nudge('side', -1);
    expect(model.fields.side.value.figure).toBeCloseTo(-1.125, 9);
  });

  it('is told without a sign how far it may be', () => {
    const { model } = openShot();
    model.typeIn('side', '9 left');
    expect(model.problems.side.value?.message).toBe('At most 2.92 tips either way.');
  });
});
