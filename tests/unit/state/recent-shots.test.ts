import { signal } from '@preact/signals';
import { describe, expect, it } from 'vitest';
import { DEFAULT_KIT } from '../../../src/engine/kit/kit';
import { noteRecentShots, withRecentShot } from '../../../src/state/recent-shots';
import type { Answered } from '../../../src/state/shot-answers';
import { DEFAULT_SHOT } from '../../../src/store/default-desk';
import type { LaidShot } from '../../../src/store/records';
import { answerTo } from './open-shot';

const at = (distanceM: number): LaidShot => ({ ...DEFAULT_SHOT, distanceM });

describe('the recent shots', () => {
  it('are the newest first, twelve at most', () => {
    const distances = Array.from({ length: 15 }, (_, index) => 0.3 + index / 10);
    const recent = distances.map(at).reduce(withRecentShot, [] as readonly LaidShot[]);
    expect(recent).toHaveLength(12);
    expect(recent[0]).toEqual(at(distances[14] ?? 0));
    expect(recent[11]).toEqual(at(distances[3] ?? 0));
  });

  it('hold a shot that was nudged about once, as it was last', () => {
    const nudged = [1, 1.02, 1.04].map(at).reduce(withRecentShot, [at(2)]);
    expect(nudged).toEqual([at(1.04), at(2)]);
  });

  it('count shots as two that differ in any input', () => {
    const others: readonly Partial<LaidShot>[] = [
      { distanceM: 0.9 },
      { cutRad: 0.2 },
      { side: 0.3 },
      { height: -0.2 },
      { elevationRad: 0.2 },
      { speedMps: 2.5 },
    ];
    const shots = others.map((other) => ({ ...DEFAULT_SHOT, ...other }));
    expect(shots.reduce(withRecentShot, [DEFAULT_SHOT])).toHaveLength(7);
  });

  it('bring one that is asked again to the front', () => {
    expect(withRecentShot([at(2), at(1)], at(1))).toEqual([at(1), at(2)]);
  });
});

describe('noting them', () => {
  it('waits until the hand rests at an answered shot, and stops when told', () => {
    const answeredTo = (shot: LaidShot): Answered => ({
      shot,
      kit: DEFAULT_KIT,
      answer: answerTo(shot),
    });
    const lastAnswer = signal<Answered | null>(null);
    const noted: LaidShot[] = [];
    const waiting = new Set<() => void>();
    const stop = noteRecentShots({
      lastAnswer,
      desk: { noteShot: (shot) => void noted.push(shot) },
      later: (work) => {
        waiting.add(work);
        return () => waiting.delete(work);
      },
    });
    expect(waiting.size).toBe(0);
    lastAnswer.value = answeredTo(at(1));
    lastAnswer.value = answeredTo(at(1.5));
    expect(waiting.size).toBe(1);
    for (const work of waiting) work();
    expect(noted).toEqual([at(1.5)]);
    waiting.clear();
    stop();
    lastAnswer.value = answeredTo(at(2));
    expect(waiting.size).toBe(0);
  });
});
