import { describe, expect, it } from 'vitest';
import type { Shot, SolveAim } from '../../../src/engine/direct/shot';
import { DEFAULT_KIT } from '../../../src/engine/kit/kit';
import { shotWarnings } from '../../../src/state/shot-warnings';
import { DEFAULT_SHOT } from '../../../src/store/default-desk';
import { radOf } from '../../../src/units/angle-degrees';
import { answerTo } from './open-shot';

const PLAIN: Shot = { ...DEFAULT_SHOT, side: 0.2, height: 0, elevationRad: 0, speedMps: 2 };

function warn(shot: Shot, solve: SolveAim = answerTo) {
  const answer = solve(shot, DEFAULT_KIT);
  if (!answer.ok) throw new Error('this shot was meant to have an answer');
  return shotWarnings(shot, DEFAULT_KIT, answer, solve, 2.54);
}

/** An aim that moves this much, m at the ghost ball, for each share of the speed of 2 m/s. */
const sensitive =
  (movesM: number): SolveAim =>
  (shot) => ({ ...answerTo(shot), aimOffsetM: (shot.speedMps / 2) * movesM });

describe('warnings', () => {
  it('are none for a plain shot', () => {
    expect(warn(PLAIN)).toEqual([]);
  });

  it.each([
    [0.45, 0, []],
    [0.46, 0, [{ kind: 'near-miscue', contact: 0.46 }]],
    [0, -0.48, [{ kind: 'near-miscue', contact: 0.48 }]],
  ])('tell of a contact near the limit: %f right, %f up', (side, height, told) => {
    expect(warn({ ...PLAIN, side, height })).toEqual(told);
  });

  it.each([
    [75, []],
    [76, [{ kind: 'thin-cut' }]],
    [-80, [{ kind: 'thin-cut' }]],
  ])('tell of a cut over 75°, to either side: %f°', (cutDeg, told) => {
    expect(warn({ ...PLAIN, cutRad: radOf(cutDeg) })).toEqual(told);
  });

  // A bed of 2.54 by 1.27 m measures 2.84 m across its corners.
  it.each([
    [2.83, []],
    [2.85, [{ kind: 'beyond-table' }]],
  ])('tell of a cue ball farther away than the table is long: %f m', (distanceM, told) => {
    expect(warn({ ...PLAIN, distanceM })).toEqual(told);
  });

  it('tell of a cue raised ten degrees, as typed in degrees', () => {
    expect(warn({ ...PLAIN, elevationRad: radOf(10) })).toEqual([{ kind: 'raised-cue' }]);
    expect(warn({ ...PLAIN, elevationRad: radOf(9.5) })).toEqual([]);
  });

  it('tell of an aim that five per cent of speed moves by more than 4 mm', () => {
    expect(warn(PLAIN, sensitive(0.079))).toEqual([]);
    const [told] = warn(PLAIN, sensitive(0.081));
    expect(told).toMatchObject({ kind: 'speed-sensitive' });
    expect(told?.kind === 'speed-sensitive' && told.changeM).toBeCloseTo(0.00405, 12);
  });

  it('tell of an aim that five per cent of speed turns by more than 0.2°', () => {
    const turning: SolveAim = (shot) => ({
      ...answerTo(shot),
      aimRad: radOf(((shot.speedMps - 2) / 2) * 4.2),
    });
    const [told] = warn(PLAIN, turning);
    expect(told?.kind === 'speed-sensitive' && told.changeRad).toBeCloseTo(radOf(0.21), 12);
  });

  it('tell when a little softer or firmer there is no aim at all', () => {
    const edgeAt =
      (isRefused: (speedMps: number) => boolean): SolveAim =>
      (shot) =>
        isRefused(shot.speedMps) ? { ok: false, reason: 'stops-short' } : answerTo(shot);
    expect(
      warn(
        PLAIN,
        edgeAt((v) => v < 1.95),
      ),
    ).toEqual([{ kind: 'speed-edge', towards: 'softer' }]);
    expect(
      warn(
        PLAIN,
        edgeAt((v) => v > 2.05),
      ),
    ).toEqual([{ kind: 'speed-edge', towards: 'firmer' }]);
  });

  it('tell when swerve outweighs squirt, unless it is too little to see', () => {
    const parts =
      (squirtDeg: number, swerveDeg: number): SolveAim =>
      (shot) => ({
        ...answerTo(shot),
        parts: { squirtRad: radOf(squirtDeg), swerveRad: radOf(swerveDeg), throwRad: 0 },
      });
    expect(warn(PLAIN, parts(1, -1.2))).toEqual([{ kind: 'swerve-leads' }]);
    expect(warn(PLAIN, parts(1.2, -1))).toEqual([]);
    expect(warn(PLAIN, parts(0, 0.05))).toEqual([]);
  });

  it('put the most pressing first', () => {
    const shot = { ...PLAIN, side: 0.5, elevationRad: radOf(20) };
    expect(warn(shot, sensitive(0.5)).map(({ kind }) => kind)).toEqual([
      'raised-cue',
      'speed-sensitive',
      'near-miscue',
    ]);
  });
});
