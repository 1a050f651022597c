import { signal } from '@preact/signals';
import { describe, expect, it } from 'vitest';
import { solveAim } from '../../../src/engine/aim/solve-aim';
import { DEFAULT_KIT } from '../../../src/engine/model/kit';
import { UNMEASURED } from '../../../src/engine/room/kit-spread';
import { roomForError } from '../../../src/engine/room/room-for-error';
import { createRoomModel } from '../../../src/state/room-model';
import type { Answered } from '../../../src/state/shot-answers';
import { DEFAULT_POCKET, DEFAULT_SHOT } from '../../../src/store/default-desk';
import type { PlayerName } from '../../../src/store/records';

function answeredAt(speedMps: number): Answered {
  const shot = { ...DEFAULT_SHOT, speedMps };
  const answer = solveAim(shot, DEFAULT_KIT);
  if (!answer.ok) throw new Error(answer.message);
  return { shot, kit: DEFAULT_KIT, answer };
}

/** A room model whose idle moments the test decides. */
function modelAtRest() {
  const lastAnswer = signal<Answered | null>(answeredAt(1.8));
  const pocket = signal(DEFAULT_POCKET);
  const player = signal<PlayerName>('club');
  const spread = signal(UNMEASURED);
  const waiting = new Set<() => void>();
  const model = createRoomModel({
    lastAnswer,
    desk: { pocket, player },
    spread,
    assess: roomForError,
    later: (work) => {
      waiting.add(work);
      return () => waiting.delete(work);
    },
  });
  const rest = () => {
    const due = [...waiting];
    waiting.clear();
    for (const work of due) work();
    return due.length;
  };
  return { model, lastAnswer, pocket, player, spread, rest };
}

describe('the room model', () => {
  it('assesses once the hand rests, and only the last of many changes', () => {
    const { model, lastAnswer, rest } = modelAtRest();
    expect(model.room.value).toBeNull();
    lastAnswer.value = answeredAt(1.9);
    lastAnswer.value = answeredAt(2);
    expect(rest()).toBe(1);
    expect(model.isFresh.value).toBe(true);
    expect(model.room.value?.windows?.speedMps.low.value).toBeLessThan(2);
    expect(model.room.value?.windows?.speedMps.high.value).toBeGreaterThan(2);
  });

  it('keeps the last room, marked as not fresh, until the next', () => {
    const { model, lastAnswer, rest } = modelAtRest();
    rest();
    const before = model.room.value;
    lastAnswer.value = answeredAt(2.4);
    expect(model.isFresh.value).toBe(false);
    expect(model.room.value).toBe(before);
    rest();
    expect(model.isFresh.value).toBe(true);
    expect(model.room.value).not.toBe(before);
  });

  it('gives a steadier player, and a wider mouth, the better chance', () => {
    const { model, pocket, player, rest } = modelAtRest();
    rest();
    const club = model.room.value?.chance.share ?? Number.NaN;
    player.value = 'steady';
    rest();
    const steady = model.room.value?.chance.share ?? Number.NaN;
    expect(steady).toBeGreaterThan(club);
    pocket.value = { ...DEFAULT_POCKET, mouthM: 0.2 };
    rest();
    expect(model.room.value?.chance.share).toBeGreaterThan(steady);
    expect(model.room.value?.chanceOnKnownKit.share).toBeGreaterThan(steady);
  });

  it('tells how far off the target line the pocket lets the object ball leave', () => {
    const { model, lastAnswer, pocket } = modelAtRest();
    pocket.value = { distanceM: 1, mouthM: 0.11715 };
    // Half of 117.15 mm less a ball's radius of 28.575 mm is 30 mm, over a metre.
    expect(model.allowedRad.value).toBeCloseTo(Math.atan(0.03), 12);
    lastAnswer.value = null;
    expect(model.allowedRad.value).toBeNull();
  });

  it('tells how the player’s strokes scatter, and what of the kit is measured', () => {
    const { model, player, spread } = modelAtRest();
    const club = model.profile.value.directionRad;
    player.value = 'steady';
    expect(model.profile.value.directionRad).toBeLessThan(club);
    expect(model.isMeasured('massRatio')).toBe(false);
    spread.value = { ...UNMEASURED, massRatio: 0.05 };
    expect(model.isMeasured('massRatio')).toBe(true);
    expect(model.isMeasured('slideFriction')).toBe(false);
  });

  it('does nothing more once disposed of', () => {
    const { model, lastAnswer, rest } = modelAtRest();
    model.dispose();
    lastAnswer.value = answeredAt(2.2);
    expect(rest()).toBe(0);
  });
});
