import { beforeEach, expect, it, vi } from 'vitest';
import type { Shot } from '../../../src/engine/direct/shot';
import { solveAim } from '../../../src/engine/direct/solve-aim';
import { DEFAULT_KIT, type Kit } from '../../../src/engine/kit/kit';
import { createNotedAnswers } from '../../../src/state/noted-answers';
import { DEFAULT_DESK } from '../../../src/store/default-desk';
import { textInMemory } from '../../harness/text-in-memory';

const { shot } = DEFAULT_DESK;
const softer: Shot = { ...shot, speedMps: 0.95 * shot.speedMps };
const refused: Shot = { ...shot, speedMps: 0.05, distanceM: 2 };

let note = textInMemory();
beforeEach(() => {
  note = textInMemory();
});

/** A visit that asks for something, and rests. */
function visit(asked: readonly (readonly [Shot, Kit])[], build = 'this build') {
  const solve = vi.fn(solveAim);
  const answers = createNotedAnswers({ note, build, solve });
  const told = asked.map(([shot, kit]) => answers.solve(shot, kit));
  answers.keep();
  return { told, solved: solve.mock.calls.length };
}

it('has the engine’s very answers at the next visit, refusals among them, without solving', () => {
  const asked = [shot, softer, refused].map((one) => [one, DEFAULT_KIT] as const);
  expect(visit(asked).solved).toBe(3);
  // Read from the device, a kit is never the same object.
  const anew = structuredClone(asked);
  expect(visit(anew)).toEqual({ told: asked.map((one) => solveAim(...one)), solved: 0 });
  expect(visit(anew).solved).toBe(0);
});

it.each([
  ['a shot a hair apart', { ...shot, side: shot.side + 1e-15 }, DEFAULT_KIT],
  ['another kit', shot, { ...DEFAULT_KIT, slideFriction: DEFAULT_KIT.slideFriction + 1e-12 }],
] as const)('solves %s', (_, other, kit) => {
  visit([[shot, DEFAULT_KIT]]);
  expect(visit([[other, kit]])).toEqual({ told: [solveAim(other, kit)], solved: 1 });
  expect(visit([[other, kit]]).solved).toBe(0);
});

it.each([
  ['by another build', () => note.get()],
  ['and damaged', () => note.get()?.replace(/"aimRad":-?\d\.\d/, '"aimRad":3.1') ?? null],
  ['by nobody', () => 'leeway'],
])('takes no word for it that was noted %s', (why, spoil) => {
  visit([[shot, DEFAULT_KIT]]);
  const before = note.get();
  note.set(spoil());
  if (why === 'and damaged') expect(note.get()).not.toBe(before);
  const build = why === 'by another build' ? 'the next build' : 'this build';
  expect(visit([[shot, DEFAULT_KIT]], build)).toEqual({
    told: [solveAim(shot, DEFAULT_KIT)],
    solved: 1,
  });
});

it('looks nothing up any more once something else was asked', () => {
  visit([[shot, DEFAULT_KIT]]);
  const asked = [softer, shot].map((one) => [one, DEFAULT_KIT] as const);
  expect(visit(asked).solved).toBe(2);
});
