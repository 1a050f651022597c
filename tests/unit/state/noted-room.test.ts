import { beforeEach, expect, it } from 'vitest';
import { strokeOf } from '../../../src/engine/direct/shot';
import { solveAim } from '../../../src/engine/direct/solve-aim';
import { DEFAULT_KIT } from '../../../src/engine/kit/kit';
import { KIT_QUANTITIES, UNMEASURED } from '../../../src/engine/kit/kit-spread';
import { roomForError } from '../../../src/engine/room/room-for-error';
import { INVENTED_PROFILES } from '../../../src/engine/room/stroke-profile';
import { createNotedRoom } from '../../../src/state/noted-room';
import { DEFAULT_DESK } from '../../../src/store/default-desk';
import type { PlayerRoom, PlayerRoomQuestion } from '../../../src/worker/room-client';
import { textInMemory } from '../../harness/text-in-memory';

let note = textInMemory();
beforeEach(() => {
  note = textInMemory();
});

function questionAt(speedMps: number): PlayerRoomQuestion {
  const balls = { ...DEFAULT_DESK.shot, speedMps };
  const answer = solveAim(balls, DEFAULT_KIT);
  if (!answer.ok) throw new Error(answer.reason);
  return {
    balls,
    target: { kind: 'mouth', ...DEFAULT_DESK.pocket },
    kit: DEFAULT_KIT,
    stroke: strokeOf(balls, answer.aimRad),
    profile: INVENTED_PROFILES.club,
    some: null,
    spread: UNMEASURED,
    chanceSpread: UNMEASURED,
    correlation: KIT_QUANTITIES.map((_, i) => KIT_QUANTITIES.map((_, j) => Number(i === j))),
  };
}

const question = questionAt(1.8);
const room: PlayerRoom = { ...roomForError(question), range: null };

function visit(build = 'this build', told: PlayerRoom | null = room) {
  const noted = createNotedRoom({
    note,
    build,
    assess: (_, done) => {
      done(told);
      return () => {};
    },
  });
  noted.assess(question, () => {});
  noted.keep();
}

const recall = (asked: PlayerRoomQuestion, build = 'this build') =>
  createNotedRoom({ note, build, assess: () => () => {} }).recall(asked);

it('has the very room at the next visit, for the very question', () => {
  expect(recall(question)).toBeNull();
  visit();
  expect(recall(structuredClone(question))).toEqual(room);
});

it('knows none of another question, another build, or of what was damaged', () => {
  visit();
  expect(recall(questionAt(1.8 + 1e-12))).toBeNull();
  expect(recall(question, 'another build')).toBeNull();
  const before = note.get();
  note.set(before?.replace(/"share":0\.\d/, '"share":0.0') ?? null);
  expect(note.get()).not.toBe(before);
  expect(recall(question)).toBeNull();
});

it('notes no room that could not be worked out, and none that JSON cannot say', () => {
  visit('this build', null);
  expect(note.get()).toBeNull();
  visit('this build', { ...room, certainty: { ...room.certainty, aimSdRad: Infinity } });
  expect(note.get()).toBeNull();
});
