import { describe, expect, it } from 'vitest';
import { MODEL_VERSION } from '../../../../src/engine/fit/model-version';
import type { Attempt } from '../../../../src/store/attempt';
import type { WriteResult } from '../../../../src/store/store-port';
import { CURVE, LINE, openMeasure } from './open-measure';

const FULL: WriteResult = { ok: false, reason: 'full' };

describe('an attempt', () => {
  it('is kept from its beginning, with what is in play', async () => {
    const { measure, memory, desk } = await openMeasure();
    const id = measure.begin(LINE);
    await measure.flush();
    const { attempts } = await memory.loadAll();
    expect(attempts).toEqual([
      {
        id,
        startedAtMs: 1_790_000_001_000,
        modelVersion: MODEL_VERSION,
        choice: desk.choice.value,
        shot: LINE,
        readings: {},
        butt: null,
        stepsDone: [],
        typed: null,
        isStruckOut: false,
      },
    ]);
  });

  it('goes step by step, each kept in its turn', async () => {
    const saved: Attempt[] = [];
    const { measure } = await openMeasure({
      store: {
        put: async (_list, attempt) => {
          saved.push(attempt as Attempt);
          return { ok: true };
        },
      },
    });
    const id = measure.begin(LINE);
    expect(measure.progress(id)?.now?.name).toBe('place');
    measure.finishStep(id);
    measure.finishStep(id);
    measure.type(id, '8');
    expect(measure.progress(id)?.attempt.typed).toEqual({ step: 'landingM', text: '8' });
    expect(measure.enter(id, 0.08)).toEqual({ ok: true });
    await measure.flush();
    expect(measure.progress(id)?.now).toBeNull();
    expect(saved.map(({ stepsDone }) => stepsDone.length)).toEqual([0, 1, 2, 2, 3]);
    expect(saved.at(-1)).toMatchObject({ readings: { landingM: 0.08 }, typed: null });
  });

  it('goes on where it stood when the app is opened again', async () => {
    const { measure, memory } = await openMeasure();
    const id = measure.begin(LINE);
    measure.finishStep(id);
    measure.finishStep(id);
    measure.type(id, '8.5');
    await measure.flush();
    const again = (await openMeasure({ kept: memory })).measure;
    expect(again.unfinished.value?.attempt.id).toBe(id);
    expect(again.unfinished.value?.now?.name).toBe('landingM');
    expect(again.progress(id)?.attempt.typed).toEqual({ step: 'landingM', text: '8.5' });
  });

  it('is still to be finished when another kit is in play', async () => {
    const { measure, kit } = await openMeasure();
    const older = measure.begin(LINE);
    kit.choose('cues', 'demo-cue-stiff');
    kit.choose('cloths', 'demo-cloth-worn');
    kit.choose('balls', 'demo-balls-dirty');
    kit.choose('tables', 'demo-table-8ft');
    expect(measure.attempts.value).toEqual([]);
    expect(measure.unfinished.value?.attempt.id).toBe(older);
    const newer = measure.begin(LINE);
    expect(measure.unfinished.value?.attempt.id).toBe(newer);
    measure.strikeOut(newer, true);
    expect(measure.unfinished.value?.attempt.id).toBe(older);
    measure.remove(older);
    expect(measure.unfinished.value).toBeNull();
  });

  it('takes a distance into its set-up', async () => {
    const { measure } = await openMeasure();
    const id = measure.begin({ ...LINE, trial: 'coast' });
    measure.finishStep(id);
    measure.enter(id, 5.2);
    measure.enter(id, 1.6);
    expect(measure.progress(id)).toMatchObject({
      now: null,
      attempt: { readings: { timeS: 5.2 }, shot: { setup: { distanceM: 1.6 } } },
    });
  });

  it('refuses what cannot be, in a line, and stays where it is', async () => {
    const { measure } = await openMeasure();
    const id = measure.begin(LINE);
    expect(measure.enter(id, 1)).toMatchObject({ ok: false });
    measure.finishStep(id);
    measure.finishStep(id);
    expect(measure.finishStep(id)).toEqual({
      ok: false,
      problem: 'This step asks for a number.',
    });
    // No table is 3 m wide, so no ball lands that far aside.
    for (const value of [3, -3, Number.NaN]) {
      expect(measure.enter(id, value)).toMatchObject({ ok: false });
    }
    expect(measure.progress(id)?.now?.name).toBe('landingM');
    measure.enter(id, 0.1);
    expect(measure.enter(id, 0.1)).toEqual({ ok: false, problem: 'All of it is done.' });
    expect(measure.enter('gone', 0.1)).toMatchObject({ ok: false });
    expect(measure.finishStep('gone')).toMatchObject({ ok: false });
  });

  it('takes its steps back one by one, with what they read', async () => {
    const { measure, shootLine } = await openMeasure();
    const id = shootLine();
    expect(measure.stepBack(id)).toEqual({ ok: true });
    expect(measure.progress(id)).toMatchObject({ attempt: { readings: {} } });
    expect(measure.progress(id)?.now?.name).toBe('landingM');
    measure.stepBack(id);
    measure.stepBack(id);
    expect(measure.progress(id)?.now?.name).toBe('place');
    expect(measure.stepBack(id)).toMatchObject({ ok: false });
  });

  it('can be removed and put back', async () => {
    const { measure, memory, shootLine } = await openMeasure();
    const id = shootLine();
    const attempt = measure.progress(id)?.attempt;
    expect(measure.remove(id)).toEqual({ ok: true });
    await measure.flush();
    expect((await memory.loadAll()).attempts).toEqual([]);
    expect(measure.remove(id)).toMatchObject({ ok: false });
    expect(measure.restore()).toEqual({ ok: true });
    expect(measure.restore()).toMatchObject({ ok: false });
    await measure.flush();
    expect((await memory.loadAll()).attempts).toEqual([attempt]);
  });

  it('stays on screen where it cannot be saved, says so, and is tried again when flushed', async () => {
    let isFull = true;
    const { measure, memory } = await openMeasure({
      store: { put: async (list, row) => (isFull ? FULL : memory.put(list, row)) },
    });
    const id = measure.begin(LINE);
    await measure.flush();
    expect(measure.problem.value).toMatch(/^No room left/);
    expect(measure.finishStep(id)).toEqual({ ok: true });
    isFull = false;
    await measure.flush();
    expect(measure.problem.value).toBeNull();
    expect((await memory.loadAll()).attempts).toMatchObject([{ id, stepsDone: ['place'] }]);
  });
});

describe('the butt of a raised cue', () => {
  /** A curve shot at the step that asks for the butt. */
  async function atButt() {
    const opened = await openMeasure();
    const id = opened.measure.begin(CURVE);
    opened.measure.finishStep(id);
    return { ...opened, id };
  }

  it('is read with the length of the cue, an ordinary one until another is said', async () => {
    const { measure, id } = await atButt();
    expect(measure.cueLengthM(id)).toBe(1.47);
    expect(measure.setCueLength(id, 1.5)).toEqual({ ok: true });
    measure.enter(id, 0.4);
    expect(measure.progress(id)?.attempt.butt).toEqual({ buttHeightM: 0.4, cueLengthM: 1.5 });
    expect(measure.progress(id)?.now?.name).toBe('timeS');
  });

  it('has the length it had before with the same cue, and no other', async () => {
    const { measure, memory, id } = await atButt();
    measure.setCueLength(id, 1.5);
    measure.enter(id, 0.4);
    await measure.flush();
    const again = await openMeasure({ kept: memory });
    expect(again.measure.cueLengthM(again.measure.begin(CURVE))).toBe(1.5);
    again.kit.choose('cues', 'demo-cue-stiff');
    expect(again.measure.cueLengthM(again.measure.begin(CURVE))).toBe(1.47);
  });

  it('is to be raised by the sine of what the shot means', async () => {
    const { measure, id } = await atButt();
    // From the ball's centre, 1⅛ in up (WPA), to the butt: so far and the cue's length.
    const reachM = 0.028575 + 1.47;
    expect(measure.buttHeightM(id)).toBeCloseTo(0.028575 + reachM * Math.sin(0.2), 2);
    expect(measure.buttHeightM('gone')).toBeNull();
  });

  it('tells the elevation of a height that is far from the one wanted, and of no other', async () => {
    const { measure, id } = await atButt();
    // 0.2 rad is 11½°; 5 cm make a cue of a metre and a half all but level, 80 cm raise it by 31°.
    expect(measure.elevationFarOff(id, 0.05)).toBeCloseTo((0.05 - 0.028575) / 1.5, 2);
    expect(measure.elevationFarOff(id, 0.8)).toBeCloseTo(Math.asin((0.8 - 0.028575) / 1.5), 1);
    for (const heightM of [0.26, 0.33, 0.4]) {
      expect(measure.elevationFarOff(id, heightM)).toBeNull();
    }
    expect(measure.elevationFarOff('gone', 0.05)).toBeNull();
  });

  it('is refused below the tip and beyond 45°, and so is a length no cue has', async () => {
    const { measure, id } = await atButt();
    for (const heightM of [0.01, 1.15, 1.3, -1]) {
      expect(measure.enter(id, heightM)).toMatchObject({ ok: false });
    }
    expect(measure.setCueLength(id, 3)).toMatchObject({ ok: false });
    expect(measure.progress(id)?.now?.name).toBe('butt');
    measure.enter(id, 1);
    // On a short cue the same butt would be raised beyond 45°.
    expect(measure.setCueLength(id, 1)).toMatchObject({ ok: false });
    expect(measure.progress(id)?.attempt.butt?.cueLengthM).toBe(1.47);
  });
});
