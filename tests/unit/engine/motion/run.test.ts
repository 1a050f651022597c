import { describe, expect, it } from 'vitest';
import type { BallState } from '../../../../src/engine/ball/ball-state';
import { type Place, stateAt } from '../../../../src/engine/motion/phase';
import { type Run, runOf, type Watch } from '../../../../src/engine/motion/run';
import { between, seededRandom } from '../../../harness/seeded-random';
import { anyBall, anyKit } from '../ball/random-balls';

/** Sees nothing, wherever a ball goes. */
const BLIND: Watch = { clearM: () => Number.POSITIVE_INFINITY };

function drops(count: number, slope: number) {
  const random = seededRandom(count);
  return Array.from({ length: count }, () => {
    const kit = anyKit(random, slope);
    const ball: BallState = { ...anyBall(random), vz: -Math.exp(between(random, -6, 1)) };
    return { kit, ball };
  });
}

/** Goes to the first phase that is no hop, and counts the phases before it. */
function untilDown(run: Run, watch: Watch | null): number {
  let hops = 0;
  while (run.next(watch) && run.phase.motion === 'flying') hops++;
  return hops;
}

describe.each([0, 0.008])('a run past hops that nothing sees, bed tilted up to %d', (slope) => {
  it('is down as if it had taken them one by one', () => {
    let [all, left] = [0, 0];
    for (const { kit, ball } of drops(500, slope)) {
      const [plain, passing] = [runOf(ball, 2, kit), runOf(ball, 2, kit)];
      all += untilDown(plain, null);
      left += untilDown(passing, BLIND);
      const [is, was] = [passing.phase, plain.phase];
      expect(is.motion).toBe(was.motion);
      expect(is.startS).toBeCloseTo(was.startS, 12);
      for (const key of ['xM', 'yM', 'zM', 'vx', 'vy', 'vz'] as const) {
        expect(is.start[key]).toBeCloseTo(was.start[key], 11);
      }
      for (const key of ['wx', 'wy', 'wz'] as const) {
        expect(is.start[key]).toBeCloseTo(was.start[key], 9);
      }
    }
    expect(all).toBeGreaterThan(2000);
    expect(left).toBe(0);
  });

  it('tells the hop that comes to what is watched', () => {
    for (const { kit, ball } of drops(200, slope)) {
      const plain = runOf(ball, 0, kit);
      const hops: { startS: number; overM: Place }[] = [];
      while (plain.next() && plain.phase.motion === 'flying') {
        const { startS, durationS } = plain.phase;
        hops.push({ startS, overM: stateAt(plain.phase, durationS / 2) });
      }
      const hop = hops[Math.floor(hops.length / 2)];
      if (hop === undefined) continue;
      // A post that the middle of this hop is over.
      const { xM, yM } = hop.overM;
      const watch: Watch = { clearM: (x, y) => Math.hypot(x - xM, y - yM) };
      const run = runOf(ball, 0, kit);
      let isTold = false;
      while (run.next(watch)) isTold ||= Math.abs(run.phase.startS - hop.startS) < 1e-9;
      expect(isTold).toBe(true);
    }
  });
});

it('begins anew with another ball, and forgets the one before', () => {
  const [first, second] = drops(2, 0);
  if (first === undefined || second === undefined) throw new RangeError('there are two');
  const used = runOf(first.ball, 0, first.kit);
  while (used.next());
  used.begin(second.ball, 1, second.kit);
  const fresh = runOf(second.ball, 1, second.kit);
  while (fresh.next()) {
    expect(used.next()).toBe(true);
    expect(used.phase).toEqual(fresh.phase);
  }
  expect(used.next()).toBe(false);
  expect(used.end).toEqual(fresh.end);
});
