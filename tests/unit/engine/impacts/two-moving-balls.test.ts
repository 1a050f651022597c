import { describe, expect, it } from 'vitest';
import type { BallState } from '../../../../src/engine/ball/ball-state';
import {
  afterMeeting,
  closingSpeed,
  type LineOfCentres,
  lineOfCentres,
} from '../../../../src/engine/impacts/two-moving-balls';
import type { Kit } from '../../../../src/engine/kit/kit';
import { seededRandom } from '../../../harness/seeded-random';
import { anyBall, anyKit } from '../ball/random-balls';

interface Meeting {
  readonly kit: Kit;
  readonly one: BallState;
  readonly other: BallState;
  readonly line: LineOfCentres;
}

/** Two balls of any motion that touch and close. */
function meetings(count: number): readonly Meeting[] {
  const random = seededRandom(1668);
  const found: Meeting[] = [];
  while (found.length < count) {
    const kit = anyKit(random);
    const way = 2 * Math.PI * random();
    const one = anyBall(random);
    const width = 2 * kit.ballRadiusM;
    const xM = one.xM + width * Math.sin(way);
    const yM = one.yM + width * Math.cos(way);
    const other = { ...anyBall(random), xM, yM };
    const line = lineOfCentres(one, other);
    if (closingSpeed(one, other, line) > 0) found.push({ kit, one, other, line });
  }
  return found;
}

const ALL = meetings(1000);
const velocity = ({ vx, vy, vz }: BallState) => [vx, vy, vz] as const;

// Source: rigid-body mechanics of one impulse at one point. Exact.
describe('two moving balls that meet', () => {
  it('keep their momentum together', () => {
    for (const { kit, one, other, line } of ALL) {
      const after = afterMeeting(one, other, line, kit);
      velocity(one).forEach((_, axis) => {
        const total = (a: BallState, b: BallState) =>
          kit.cueBallMassRatio * (velocity(a)[axis] ?? 0) + (velocity(b)[axis] ?? 0);
        expect(total(after.one, after.other)).toBeCloseTo(total(one, other), 11);
      });
    }
  });

  it('part at the stated share of the speed at which they close', () => {
    for (const { kit, one, other, line } of ALL) {
      const after = afterMeeting(one, other, line, kit);
      const parting = -closingSpeed(after.one, after.other, line);
      expect(parting).toBeCloseTo(kit.ballRestitution * closingSpeed(one, other, line), 11);
    }
  });

  it('never gain energy', () => {
    for (const { kit, one, other, line } of ALL) {
      const energy = ({ vx, vy, vz, wx, wy, wz }: BallState) =>
        (vx ** 2 + vy ** 2 + vz ** 2) / 2 +
        (kit.ballRadiusM ** 2 * (wx ** 2 + wy ** 2 + wz ** 2)) / 5;
      const total = (a: BallState, b: BallState) => kit.cueBallMassRatio * energy(a) + energy(b);
      const after = afterMeeting(one, other, line, kit);
      expect(total(after.one, after.other)).toBeLessThanOrEqual(total(one, other) * (1 + 1e-12));
    }
  });

  it('do the same whichever is called the first, where they weigh the same', () => {
    for (const { kit, one, other, line } of ALL) {
      const even = { ...kit, cueBallMassRatio: 1 };
      const there = afterMeeting(one, other, line, even);
      const back = afterMeeting(other, one, lineOfCentres(other, one), even);
      for (const key of ['vx', 'vy', 'vz', 'wx', 'wy', 'wz'] as const) {
        expect(back.one[key]).toBeCloseTo(there.other[key], 9);
        expect(back.other[key]).toBeCloseTo(there.one[key], 9);
      }
    }
  });

  it('stay where they are', () => {
    for (const { kit, one, other, line } of ALL.slice(0, 50)) {
      const after = afterMeeting(one, other, line, kit);
      expect(after.one).toMatchObject({ xM: one.xM, yM: one.yM, zM: one.zM });
      expect(after.other).toMatchObject({ xM: other.xM, yM: other.yM, zM: other.zM });
    }
  });
});
