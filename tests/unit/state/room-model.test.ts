import { effect, signal } from '@preact/signals';
import { describe, expect, it } from 'vitest';
import { solveAim } from '../../../src/engine/direct/solve-aim';
import { DEFAULT_KIT } from '../../../src/engine/kit/kit';
import { KIT_QUANTITIES, UNMEASURED } from '../../../src/engine/kit/kit-spread';
import { roomForError } from '../../../src/engine/room/room-for-error';
import { INVENTED_PROFILES } from '../../../src/engine/room/stroke-profile';
import { createDeskModel } from '../../../src/state/desk-model';
import { createRoomModel, type KnownSpread } from '../../../src/state/room-model';
import type { Answered } from '../../../src/state/shot-answers';
import { DEFAULT_DESK } from '../../../src/store/default-desk';
import { createMemoryStore } from '../../../src/store/memory-store';
import { createNoticeBoard } from '../../../src/store/notice-board';
import { somebody } from './player/open-player';

const NO_TIES = KIT_QUANTITIES.map((_, i) => KIT_QUANTITIES.map((_, j) => Number(i === j)));

function answeredAt(speedMps: number): Answered {
  const shot = { ...DEFAULT_DESK.shot, speedMps };
  const answer = solveAim(shot, DEFAULT_KIT);
  if (!answer.ok) throw new Error(answer.reason);
  return { shot, kit: DEFAULT_KIT, answer };
}

/** A room model whose idle moments the test decides, and that somebody looks at. */
async function modelAtRest() {
  const lastAnswer = signal<Answered | null>(answeredAt(1.8));
  const store = createMemoryStore(createNoticeBoard());
  const desk = createDeskModel({ store, desk: DEFAULT_DESK });
  const known = signal<KnownSpread>({ spread: UNMEASURED, correlation: NO_TIES });
  const player = somebody();
  const waiting = new Set<() => void>();
  const workers = { fail: false };
  const model = createRoomModel({
    lastAnswer,
    desk,
    player,
    known,
    spreadBefore: signal(UNMEASURED),
    assess: (job, done) => {
      done(workers.fail ? null : { ...roomForError(job), range: null });
      return () => {};
    },
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
  let lookAway = () => {};
  // Who comes and goes is counted a moment later.
  const look = (isLooked: boolean) => {
    lookAway();
    lookAway = isLooked ? effect(() => void model.room.value) : () => {};
    return Promise.resolve();
  };
  await look(true);
  return { look, model, lastAnswer, desk, player, known, rest, workers };
}

describe('the room model', () => {
  it('says that a room could not be worked out, until it is or another is wanted', async () => {
    const { model, lastAnswer, rest, workers } = await modelAtRest();
    workers.fail = true;
    rest();
    expect(model.problem.value).toContain('could not be worked out');
    model.tryAgain();
    expect(model.problem.value).toContain('could not be worked out');
    lastAnswer.value = answeredAt(2);
    expect(model.problem.value).toBeNull();
    rest();
    expect(model.problem.value).not.toBeNull();
    workers.fail = false;
    model.tryAgain();
    expect(model.problem.value).toBeNull();
    expect(model.isFresh.value).toBe(true);
    model.dispose();
  });

  it('assesses once the hand rests, and only the last of many changes', async () => {
    const { model, lastAnswer, rest } = await modelAtRest();
    expect(model.room.value).toBeNull();
    lastAnswer.value = answeredAt(1.9);
    lastAnswer.value = answeredAt(2);
    expect(rest()).toBe(1);
    expect(model.isFresh.value).toBe(true);
    expect(model.room.value?.windows?.speedMps.low.value).toBeLessThan(2);
    expect(model.room.value?.windows?.speedMps.high.value).toBeGreaterThan(2);
  });

  it('keeps the last room, marked as not fresh, until the next', async () => {
    const { model, lastAnswer, rest } = await modelAtRest();
    rest();
    const before = model.room.value;
    lastAnswer.value = answeredAt(2.4);
    expect(model.isFresh.value).toBe(false);
    expect(model.room.value).toBe(before);
    rest();
    expect(model.isFresh.value).toBe(true);
    expect(model.room.value).not.toBe(before);
  });

  it('gives a steadier player, and a wider mouth, the better chance', async () => {
    const { model, desk, player, rest } = await modelAtRest();
    rest();
    const club = model.room.value?.chance.share ?? Number.NaN;
    player.profile.value = INVENTED_PROFILES.steady;
    rest();
    const steady = model.room.value?.chance.share ?? Number.NaN;
    expect(steady).toBeGreaterThan(club);
    desk.setPocket({ ...DEFAULT_DESK.pocket, mouthM: 0.2 });
    rest();
    expect(model.room.value?.chance.share).toBeGreaterThan(steady);
    expect(model.room.value?.chanceOnKnownKit.share).toBeGreaterThan(steady);
  });

  it('tells how far off the target line the pocket lets the object ball leave', async () => {
    const { model, lastAnswer, desk } = await modelAtRest();
    desk.setPocket({ distanceM: 1, mouthM: 0.11715 });
    // Half of 117.15 mm less a ball's radius of 28.575 mm is 30 mm, over a metre.
    expect(model.allowedRad.value).toBeCloseTo(Math.atan(0.03), 12);
    lastAnswer.value = null;
    expect(model.allowedRad.value).toBeNull();
  });

  it('tells what of the kit is measured', async () => {
    const { model, known } = await modelAtRest();
    expect(model.isMeasured('massRatio')).toBe(false);
    const measured = { massRatio: 0.05, rollFriction: 0.95 * UNMEASURED.rollFriction };
    known.value = { ...known.value, spread: { ...UNMEASURED, ...measured } };
    expect(model.isMeasured('massRatio')).toBe(true);
    expect(model.isMeasured('slideFriction')).toBe(false);
    // Hardly better known than before.
    expect(model.isMeasured('rollFriction')).toBe(false);
  });

  it('counts errors of the kit that go together', async () => {
    const { model, known, rest } = await modelAtRest();
    rest();
    const apart = model.room.value?.certainty;
    const [one, two] = apart?.contributions ?? [];
    if (!one || !two) throw new Error('two quantities matter to this shot');
    const [i, j] = [KIT_QUANTITIES.indexOf(one.quantity), KIT_QUANTITIES.indexOf(two.quantity)];
    const tied = (sign: number) =>
      NO_TIES.map((row, a) =>
        row.map((tie, b) => ((a === i && b === j) || (a === j && b === i) ? sign : tie)),
      );
    const variances = [-1, 1].map((sign) => {
      known.value = { spread: UNMEASURED, correlation: tied(sign) };
      rest();
      return (model.room.value?.certainty.aimSdRad ?? Number.NaN) ** 2;
    });
    // (a + b)² and (a − b)² lie 4ab apart, and their mean is a² + b².
    const [less = 0, more = 0] = variances.sort((a, b) => a - b);
    expect(more - less).toBeCloseTo(4 * one.aimSdRad * two.aimSdRad, 12);
    expect((more + less) / 2).toBeCloseTo((apart?.aimSdRad ?? 0) ** 2, 12);
  });

  it('is worked out while somebody looks, and not again for who comes back to the same', async () => {
    const { look, model, lastAnswer, rest } = await modelAtRest();
    await look(false);
    expect(rest()).toBe(0);
    await look(true);
    expect(rest()).toBe(1);
    expect(model.isFresh.value).toBe(true);
    await look(false);
    await look(true);
    expect(rest()).toBe(0);
    await look(false);
    lastAnswer.value = answeredAt(2.2);
    expect(rest()).toBe(0);
    expect(model.isFresh.value).toBe(false);
    await look(true);
    expect(rest()).toBe(1);
    expect(model.isFresh.value).toBe(true);
  });

  it('does nothing more once disposed of', async () => {
    const { model, lastAnswer, rest } = await modelAtRest();
    model.dispose();
    lastAnswer.value = answeredAt(2.2);
    expect(rest()).toBe(0);
  });
});
