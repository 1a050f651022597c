import { effect } from '@preact/signals';
import { expect, it, vi } from 'vitest';
import { playAim } from '../../../src/engine/direct/play-aim';
import { solveAim } from '../../../src/engine/direct/solve-aim';
import { traceCueBall } from '../../../src/engine/direct/trace-cue-ball';
import type { ShotModel } from '../../../src/state/shot-model';
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
const SOLVES_AT_REST = 3;

it('solves no more than the answer and its warnings need, a change', () => {
  const { model, counts } = openCounted();
  model.beginGesture();
  for (const distanceM of [1.2, 1.21, 1.22]) {
    model.setFigure('distance', distanceM);
    expect(counts()).toEqual([SOLVES_AT_REST, 1, 1]);
  }
  model.endGesture();
  expect(counts()).toEqual([0, 0, 0]);
});

/** Frames that pass as a test says, and what waits for the next of them. */
function heldFrames() {
  let frame = 0;
  let due: (() => void)[] = [];
  return {
    ports: {
      frameTime: () => frame,
      nextFrame: (work: () => void) => {
        due.push(work);
      },
    },
    /** @returns how many had asked for it */
    pass(): number {
      frame += 1;
      const now = due;
      due = [];
      for (const work of now) work();
      return now.length;
    },
  };
}

it('solves once a move of a finger, warns once it is up, and asks for no frame', () => {
  const frames = heldFrames();
  const { model, counts } = openCounted(frames.ports);
  model.beginGesture(true);
  for (const metres of [1.2, 1.21, 1.22, 1.23]) {
    model.setFigure('distance', metres);
    expect(counts()).toEqual([1, 0, 1]);
    expect(frames.pass()).toBe(0);
  }
  model.endGesture();
  expect(counts()).toEqual([SOLVES_AT_REST - 1, 1, 0]);
});

it.each([
  ['the tip', (model: ShotModel, at: number) => model.setTip(at / 100, 0.1)],
  ['the ghost ball', (model: ShotModel, at: number) => model.setCut(at / 50)],
] as const)('solves once a move of %s on the picture', (_, move) => {
  const frames = heldFrames();
  const { model, counts } = openCounted(frames.ports);
  model.beginGesture(true);
  for (const at of [3, 5, 7, 11]) {
    move(model, at);
    expect(counts()).toEqual([1, 0, 1]);
    frames.pass();
  }
  model.endGesture();
  expect(counts()).toEqual([SOLVES_AT_REST - 1, 1, 0]);
});

it('solves once a frame, however often a finger is heard of in it, and loses nothing of it', () => {
  const frames = heldFrames();
  const { model, counts } = openCounted(frames.ports);
  const distanceM = () => model.shot.value.distanceM;
  model.beginGesture(true);
  for (const metres of [1.2, 1.21, 1.22, 1.23]) model.setFigure('distance', metres);
  expect(distanceM()).toBeCloseTo(1.2, 9);
  expect(frames.pass()).toBe(1);
  expect(distanceM()).toBeCloseTo(1.23, 9);
  model.setFigure('distance', 1.24);
  model.setFigure('distance', 1.25);
  expect(counts()).toEqual([2, 0, 2]);
  model.endGesture();
  expect(distanceM()).toBeCloseTo(1.25, 9);
  expect(counts()).toEqual([SOLVES_AT_REST, 1, 1]);
  frames.pass();
  expect(counts()).toEqual([0, 0, 0]);
});

it('solves the held shot once, and nothing for what stays the same', () => {
  const { model, counts } = openCounted();
  model.hold();
  expect(counts()).toEqual([1, 0, 0]);
  model.setFigure('cut', 30);
  expect(counts()).toEqual([SOLVES_AT_REST, 1, 1]);
  model.setFigure('cut', 30);
  expect(counts()).toEqual([0, 0, 0]);
});

it('solves anew for another kit, as for another shot', () => {
  const { kit, counts } = openCounted();
  kit.value = { ...kit.value, massRatio: 40 };
  expect(counts()).toEqual([SOLVES_AT_REST, 1, 1]);
});
