import { describe, expect, it } from 'vitest';
import { directCut } from '../../../../src/engine/goal/goal';
import type { PositionShot } from '../../../../src/engine/goal/position-shot';
import { shotFrom } from '../../../../src/engine/goal/shot-from-position';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';
import type { NamedBall } from '../../../../src/engine/lie/position';
import type { PocketName } from '../../../../src/engine/table/pocket-shape';
import { WPA_POCKETS } from '../../../../src/engine/table/pocket-standard';
import { tableShape } from '../../../../src/engine/table/table-shape';

const DEG = 180 / Math.PI;
const SHAPE = tableShape(2.54, 1.27, WPA_POCKETS);
const WIDTH_M = 2 * DEFAULT_KIT.ballRadiusM;

const cueAt = (xM: number, yM: number): NamedBall => ({ name: 'cue', xM, yM });
const ballAt = (name: number, xM: number, yM: number): NamedBall => ({ name, xM, yM });

const ask = (balls: readonly NamedBall[], pocket: PocketName, ball = 3) =>
  shotFrom(balls, directCut(ball, pocket), SHAPE, DEFAULT_KIT);

function shotOf(balls: readonly NamedBall[], pocket: PocketName): PositionShot {
  const shot = ask(balls, pocket);
  if (!shot.ok) throw new Error(shot.reason);
  return shot;
}

const reasonOf = (balls: readonly NamedBall[], pocket: PocketName, ball = 3) => {
  const shot = ask(balls, pocket, ball);
  return shot.ok ? null : shot.reason;
};

describe('the shot from a position', () => {
  // The ball in the table's middle goes square to the middle pocket; the ghost ball touches it on
  // the other side, and the cue ball lies half a metre left of and half a metre below that.
  const corner = [cueAt(-WIDTH_M - 0.5, -0.5), ballAt(3, 0, 0)];

  it('has ghost ball, distance, cut and heading as drawn by hand', () => {
    const shot = shotOf(corner, 'middle-right');
    expect(shot.ghost.xM).toBeCloseTo(-WIDTH_M, 4);
    expect(shot.ghost.yM).toBeCloseTo(0, 4);
    expect(shot.distanceM).toBeCloseTo(Math.SQRT1_2, 4);
    expect(shot.headingRad * DEG).toBeCloseTo(45, 1);
    expect(shot.cutRad * DEG).toBeCloseTo(45, 1);
  });

  it('is its own mirror image', () => {
    const mirrored = corner.map(({ name, xM, yM }) => ({ name, xM: -xM, yM }));
    const [one, other] = [shotOf(corner, 'middle-right'), shotOf(mirrored, 'middle-left')];
    expect(other.cutRad).toBeCloseTo(-one.cutRad, 6);
    expect(other.headingRad).toBeCloseTo(-one.headingRad, 6);
    expect(other.target.mouthM).toBeCloseTo(one.target.mouthM, 6);
  });

  it('sees a narrower mouth the more askew it looks', () => {
    const halfAngle = (xM: number, yM: number) => {
      const { target } = shotOf([cueAt(xM - 0.3, yM), ballAt(3, xM, yM)], 'middle-right');
      return Math.atan((target.mouthM - WIDTH_M) / 2 / target.distanceM) * target.distanceM;
    };
    // All three half a metre off the mouth's middle, and 0, 30 and 45 degrees askew.
    const [square, third, half] = [0, 30, 45].map((deg) =>
      halfAngle(0.635 - 0.5 * Math.cos(deg / DEG), -0.5 * Math.sin(deg / DEG)),
    );
    expect(third).toBeLessThan(square ?? 0);
    expect(half).toBeLessThan(third ?? 0);
  });

  it('says why there is none', () => {
    expect(reasonOf([ballAt(3, 0, 0)], 'far-left')).toBe('no-cue-ball');
    expect(reasonOf(corner, 'far-left', 4)).toBe('no-such-ball');
    expect(reasonOf([cueAt(0, 0.05), ballAt(3, 0, 0)], 'far-left')).toBe('overlap');
    expect(reasonOf([cueAt(0, 0.4), ballAt(3, 0.62, 0.4)], 'far-left')).toBe('off-bed');
    expect(reasonOf([cueAt(0.4, 0), ballAt(3, 0, 0)], 'middle-right')).toBe('too-thin');
    // Against the rail, and so blind to the pocket in it.
    const frozen = ballAt(3, 0.607, 0.5);
    expect(reasonOf([cueAt(0, 0.8), frozen], 'middle-right')).toBe('pocket-closed');
  });

  it('takes a cue ball that all but touches the ball for a straight shot', () => {
    const shot = shotOf([cueAt(-WIDTH_M - 0.001, 0), ballAt(3, 0, 0)], 'middle-right');
    expect(shot.cutRad).toBe(0);
    expect(shot.distanceM).toBeGreaterThan(0);
    expect(shot.headingRad * DEG).toBeCloseTo(90, 0);
  });
});

describe('what is in the way', () => {
  const straight = (...others: readonly NamedBall[]) =>
    shotOf([cueAt(-0.5, 0), ballAt(3, 0, 0), ...others], 'middle-right').inTheWay;

  it('is nothing on an open table', () => {
    expect(straight()).toEqual([]);
  });

  it('is a ball that leaves less than a ball’s width beside the line, nearest first', () => {
    expect(straight(ballAt(8, -0.2, 0.05), ballAt(5, -0.3, -0.05))).toEqual([
      { mover: 'cue', what: 5 },
      { mover: 'cue', what: 8 },
    ]);
    expect(straight(ballAt(8, -0.2, 0.058), ballAt(9, -0.58, 0))).toEqual([]);
  });

  it('is a ball between object ball and pocket', () => {
    expect(straight(ballAt(7, 0.3, 0.04))).toEqual([{ mover: 'object', what: 7 }]);
  });

  it('is a cushion where the ball lies against it and has to come away from it', () => {
    const shot = shotOf([cueAt(0.6, -0.5), ballAt(3, 0.607, 0.3)], 'far-left');
    expect(shot.inTheWay).toEqual([{ mover: 'cue', what: 'jaw' }]);
  });

  it('is the point of a middle pocket that a ball hangs behind', () => {
    const shot = shotOf([cueAt(0.6, -0.8), ballAt(3, 0.637, 0)], 'far-right');
    expect(shot.inTheWay).toContainEqual({ mover: 'object', what: 'jaw' });
  });
});
