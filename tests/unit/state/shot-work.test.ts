import { effect } from '@preact/signals';
import { expect, it, vi } from 'vitest';
import { playAim } from '../../../src/engine/direct/play-aim';
import { solveAim } from '../../../src/engine/direct/solve-aim';
import { traceCueBall } from '../../../src/engine/direct/trace-cue-ball';
import type { ShotPorts } from '../../../src/state/shot-ports';
import { openShot } from './open-shot';

/** Shot with the engine itself, and all that a screen shows of it read. */
function openCounted(ports: Partial<ShotPorts> = {}) {
  const counted = { solve: vi.fn(solveAim), play: vi.fn(playAim), trace: vi.fn(traceCueBall) };
  const { model, kit } = openShot({}, {}, { ...counted, ...ports });
  effect(() => {
    const { result, lastAnswer, path, warnings, remedySpeed, uncorrected, comparison } = model;
    for (const each of [result, lastAnswer, path, warnings, remedySpeed, uncorrected, comparison]) {
      each.value;
    }
  });
  const counts = () =>
    [counted.solve, counted.play, counted.trace].map((port) => {
      const times = port.mock.calls.length;
      port.mockClear();
      return times;
    });
  counts();
  return { model, kit, counts };
}

/** The answer, and what a little softer and a little firmer would need, to warn of. */
const SOLVES_A_CHANGE = 3;

it('solves no more than the answer and its warnings need, a change', () => {
  const { model, counts } = openCounted();
  model.beginGesture();
  for (const distanceM of [1.2, 1.21, 1.22]) {
    model.setFigure('distance', distanceM);
    expect(counts()).toEqual([SOLVES_A_CHANGE, 1, 1]);
  }
  model.endGesture();
  expect(counts()).toEqual([0, 0, 0]);
});

it('solves once a frame, however often a finger is heard of in it, and loses nothing of it', () => {
  let frame = () => {};
  const nextFrame = (work: () => void) => {
    frame = work;
  };
  const { model, counts } = openCounted({ nextFrame });
  const distanceM = () => model.shot.value.distanceM;
  model.beginGesture();
  for (const metres of [1.2, 1.21, 1.22, 1.23]) model.setFigure('distance', metres);
  expect(distanceM()).toBeCloseTo(1.2, 9);
  frame();
  expect(distanceM()).toBeCloseTo(1.23, 9);
  model.setFigure('distance', 1.24);
  model.setFigure('distance', 1.25);
  expect(counts()).toEqual([2 * SOLVES_A_CHANGE, 2, 2]);
  model.endGesture();
  expect(distanceM()).toBeCloseTo(1.25, 9);
  expect(counts()).toEqual([SOLVES_A_CHANGE, 1, 1]);
  frame();
  expect(counts()).toEqual([0, 0, 0]);
});

it('solves the held shot once, and nothing for what stays the same', () => {
  const { model, counts } = openCounted();
  model.hold();
  expect(counts()).toEqual([1, 0, 0]);
  model.setFigure('cut', 30);
  expect(counts()).toEqual([SOLVES_A_CHANGE, 1, 1]);
  model.setFigure('cut', 30);
  expect(counts()).toEqual([0, 0, 0]);
});

it('solves anew for another kit, as for another shot', () => {
  const { kit, counts } = openCounted();
  kit.value = { ...kit.value, massRatio: 40 };
  expect(counts()).toEqual([SOLVES_A_CHANGE, 1, 1]);
});
