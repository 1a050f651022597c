import { describe, expect, it } from 'vitest';
import { goes, missAt } from '../../src/engine/goal/task';
import { type RoomWindow, roomWindows } from '../../src/engine/room/windows';
import type { Stroke } from '../../src/engine/stroke/stroke';
import { CAMPAIGN_TIMEOUT_MS, campaignSize } from '../harness/campaign-size';
import { median } from '../harness/quantile';
import { seededRandom } from '../harness/seeded-random';
import { randomSolvedShot, type SolvedShot } from '../harness/solved-shots';

const INPUTS: readonly (keyof Stroke)[] = ['aimRad', 'speedMps', 'side', 'height', 'elevationRad'];
const SHOTS = campaignSize(500, 20_000);
const LOOKS = 40;
/**
 * Where a hopping ball lands just short of contact, or just after, the miss leaps and back within
 * less than a step of the search, and a window may hold a brief excursion that it does not know of:
 * no more than this share of windows.
 */
const UNSEEN_SHARE = 1 / 10_000;

/** Shots that go to begin with, with their windows. */
function solvedWithWindows(seed: number, count: number) {
  const random = seededRandom(seed);
  const list: { solved: SolvedShot; windows: Record<keyof Stroke, RoomWindow> }[] = [];
  while (list.length < count) {
    const solved = randomSolvedShot(random);
    const windows = roomWindows(solved.task, solved.kit, solved.stroke);
    if (windows !== null) list.push({ solved, windows });
  }
  return list;
}

/** The window of every input of every shot. */
function* eachWindow(list: ReturnType<typeof solvedWithWindows>) {
  for (const { solved, windows } of list) {
    for (const input of INPUTS) yield { solved, input, ...windows[input] };
  }
}

/** Both ends exactly, and values between. */
function evenly(low: number, high: number): number[] {
  const inner = Array.from({ length: LOOKS - 1 }, (_, index) => (index + 1) / LOOKS);
  return [low, ...inner.map((share) => low + (high - low) * share), high];
}

const goesWith = ({ task, kit, stroke }: SolvedShot, input: keyof Stroke, value: number) =>
  goes(missAt(task, kit, { ...stroke, [input]: value }));

describe(`windows of ${SHOTS} random shots`, () => {
  const list = solvedWithWindows(30, SHOTS);

  it(
    'hold the present value, and everything between their ends goes',
    () => {
      const failures: string[] = [];
      for (const { solved, input, low, high } of eachWindow(list)) {
        expect(low.value).toBeLessThanOrEqual(solved.stroke[input]);
        expect(high.value).toBeGreaterThanOrEqual(solved.stroke[input]);
        for (const value of evenly(low.value, high.value)) {
          if (!goesWith(solved, input, value)) failures.push(`${input} at ${value}`);
        }
      }
      expect(list).toHaveLength(SHOTS);
      const allowed = Math.floor(UNSEEN_SHARE * SHOTS * INPUTS.length);
      expect(failures.slice(allowed)).toEqual([]);
    },
    CAMPAIGN_TIMEOUT_MS,
  );

  it(
    'end where the ball no longer goes, or where they say the range ends',
    () => {
      const failures: string[] = [];
      for (const { solved, input, low, high } of eachWindow(list)) {
        const width = Math.max(high.value - low.value, 1e-6);
        for (const [end, sign] of [
          [low, -1],
          [high, 1],
        ] as const) {
          const outside = end.value + sign * 1e-5 * width;
          if (end.endedBy !== 'range' && goesWith(solved, input, outside)) {
            failures.push(`${input} ${end.endedBy} at ${end.value}`);
          }
        }
      }
      expect(failures).toEqual([]);
    },
    CAMPAIGN_TIMEOUT_MS,
  );

  it('of the aim agree with the straight-line guess where that may be trusted', () => {
    const ratios: number[] = [];
    for (const { solved, windows } of list) {
      const { low, high, directionPerUnit } = windows.aimRad;
      const guess = (2 * solved.task.allowedRad) / Math.abs(directionPerUnit ?? 0);
      if (Math.abs(solved.shot.cutRad) < 0.6) ratios.push((high.value - low.value) / guess);
    }
    expect(ratios.length).toBeGreaterThan(SHOTS / 4);
    expect(median(ratios)).toBeCloseTo(1, 1);
  });
});
