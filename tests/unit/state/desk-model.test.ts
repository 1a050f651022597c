import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { createDeskModel } from '../../../src/state/desk-model';
import type { OnceUp } from '../../../src/state/desk-saver';
import { DEFAULT_DESK } from '../../../src/store/default-desk';
import type { Desk } from '../../../src/store/records';
import type { WriteResult } from '../../../src/store/store-port';
import { createLaterAtRest } from '../../../src/ui/later-at-rest';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

const FULL: WriteResult = { ok: false, reason: 'full' };

/** A desk on screen, and a store that answers when told to. */
function setUp(desk: Desk = DEFAULT_DESK, onceUp?: OnceUp) {
  const saves: Desk[] = [];
  const drafts: Desk[] = [];
  const answers: ((result: WriteResult) => void)[] = [];
  let hide = () => {};
  const model = createDeskModel({
    desk,
    store: {
      saveDesk(saved) {
        saves.push(saved);
        return new Promise((resolve) => answers.push(resolve));
      },
      draftDesk: (drafted) => void drafts.push(drafted),
      onElsewhere: () => () => {},
    },
    ...(onceUp && { onceUp }),
    onPageHide(listener) {
      hide = listener;
      return () => {};
    },
  });
  const answer = async (result: WriteResult = { ok: true }) => {
    answers.shift()?.(result);
    await vi.advanceTimersByTimeAsync(0);
  };
  const setSpeed = (speedMps: number) => model.setShot({ ...model.shot.peek(), speedMps });
  return { model, saves, drafts, answer, setSpeed, hide: () => hide() };
}

const speedsOf = (desks: readonly Desk[]) => desks.map(({ shot }) => shot.speedMps);

describe('the desk', () => {
  it('opens as it was loaded, with nothing to save', async () => {
    const { model, saves } = setUp();
    expect(model.shot.value).toEqual(DEFAULT_DESK.shot);
    expect(model.choice.value).toEqual(DEFAULT_DESK.choice);
    expect(model.preferences.value).toEqual(DEFAULT_DESK.preferences);
    expect(model.heldShot.value).toBeNull();
    expect(model.saving.value).toBe('saved');
    await vi.advanceTimersByTimeAsync(5000);
    expect(saves).toEqual([]);
  });

  it('shows a change at once', () => {
    const { model, setSpeed } = setUp();
    setSpeed(2.2);
    expect(model.shot.value.speedMps).toBe(2.2);
    model.setPreference('speedUnit', 'kmh');
    expect(model.preferences.value.speedUnit).toBe('kmh');
    model.choose('cues', 'demo-cue-stiff');
    expect(model.choice.value).toEqual({ ...DEFAULT_DESK.choice, cues: 'demo-cue-stiff' });
  });

  it('sets a shot aside and drops it', () => {
    const { model, setSpeed } = setUp();
    model.holdShot();
    setSpeed(3);
    expect(model.heldShot.value).toEqual(DEFAULT_DESK.shot);
    model.dropHeldShot();
    expect(model.heldShot.value).toBeNull();
  });

  it('changes one thing without touching the signals of the others', () => {
    const { model, setSpeed } = setUp();
    const { choice, preferences } = model;
    const before = [choice.value, preferences.value];
    setSpeed(2.2);
    expect(choice.value).toBe(before[0]);
    expect(preferences.value).toBe(before[1]);
  });

  it('remembers shots, and asks for no save by one it just remembered', async () => {
    const { model, saves } = setUp();
    const { headingRad: _laid, ...shot } = DEFAULT_DESK.shot;
    model.noteShot({ ...shot, headingRad: 2 });
    expect(model.recentShots.value).toEqual([shot]);
    await vi.advanceTimersByTimeAsync(300);
    model.noteShot({ ...DEFAULT_DESK.shot });
    await vi.advanceTimersByTimeAsync(300);
    expect(saves).toHaveLength(1);
  });

  it('keeps what a newer version stored with the shot', () => {
    const shot = { ...DEFAULT_DESK.shot, objectDistanceM: 1, cushions: 2 };
    const { model } = setUp({ ...DEFAULT_DESK, shot });
    model.setShot(DEFAULT_DESK.shot);
    expect(model.shot.value).toEqual({ ...DEFAULT_DESK.shot, cushions: 2 });
  });
});

describe('saving the desk', () => {
  it('happens once for a burst of changes, with the last of them, within 300 ms', async () => {
    const { model, saves, answer, setSpeed } = setUp();
    setSpeed(2);
    await vi.advanceTimersByTimeAsync(100);
    setSpeed(2.1);
    await vi.advanceTimersByTimeAsync(100);
    setSpeed(2.2);
    expect(saves).toEqual([]);
    expect(model.saving.value).toBe('pending');
    await vi.advanceTimersByTimeAsync(100);
    expect(speedsOf(saves)).toEqual([2.2]);
    await answer();
    expect(model.saving.value).toBe('saved');
  });

  it('keeps up with changes that never pause', async () => {
    const { saves, setSpeed } = setUp();
    for (let tick = 1; tick <= 100; tick += 1) {
      setSpeed(1 + tick / 100);
      await vi.advanceTimersByTimeAsync(50);
    }
    expect(saves.length).toBeGreaterThanOrEqual(16);
    await vi.advanceTimersByTimeAsync(300);
    expect(speedsOf(saves).at(-1)).toBe(2);
  });

  it('is still pending when a change came while an earlier one was being saved', async () => {
    const { model, saves, answer, setSpeed } = setUp();
    setSpeed(2);
    await vi.advanceTimersByTimeAsync(300);
    setSpeed(3);
    await answer();
    expect(model.saving.value).toBe('pending');
    await vi.advanceTimersByTimeAsync(300);
    await answer();
    expect(model.saving.value).toBe('saved');
    expect(speedsOf(saves)).toEqual([2, 3]);
  });

  it('is not asked for by a change that changes nothing', async () => {
    const { model, saves } = setUp();
    model.setShot(model.shot.value);
    model.setPreference('theme', DEFAULT_DESK.preferences.theme);
    model.choose('cues', DEFAULT_DESK.choice.cues);
    await vi.advanceTimersByTimeAsync(1000);
    expect(saves).toEqual([]);
  });

  it('says when it failed, and tries again when flushed', async () => {
    const { model, saves, answer, setSpeed } = setUp();
    setSpeed(2);
    await vi.advanceTimersByTimeAsync(300);
    await answer(FULL);
    expect(model.saving.value).toBe('failed');
    const flushed = model.flush();
    await answer();
    await flushed;
    expect(model.saving.value).toBe('saved');
    expect(speedsOf(saves)).toEqual([2, 2]);
  });
});

describe('under a finger', () => {
  it('writes nothing while it is down, and once what it did when it is up', async () => {
    const hand = new EventTarget();
    const { model, saves, drafts, setSpeed } = setUp(DEFAULT_DESK, createLaterAtRest(hand, 0));
    hand.dispatchEvent(new Event('pointerdown'));
    for (let tick = 1; tick <= 100; tick += 1) {
      setSpeed(1 + tick / 100);
      await vi.advanceTimersByTimeAsync(50);
    }
    expect(saves).toEqual([]);
    expect(drafts).toEqual([]);
    expect(model.saving.value).toBe('pending');
    hand.dispatchEvent(new Event('pointerup'));
    await vi.advanceTimersByTimeAsync(0);
    expect(speedsOf(saves)).toEqual([2]);
    await vi.advanceTimersByTimeAsync(5000);
    expect(saves).toHaveLength(1);
  });

  it('loses nothing where the page is hidden or flushed with it down', async () => {
    const hand = new EventTarget();
    const { model, saves, drafts, setSpeed, hide } = setUp(
      DEFAULT_DESK,
      createLaterAtRest(hand, 0),
    );
    hand.dispatchEvent(new Event('pointerdown'));
    setSpeed(2);
    await vi.advanceTimersByTimeAsync(1000);
    hide();
    expect(speedsOf(drafts)).toEqual([2]);
    expect(speedsOf(saves)).toEqual([2]);
    setSpeed(3);
    await vi.advanceTimersByTimeAsync(1000);
    void model.flush();
    expect(speedsOf(saves)).toEqual([2, 3]);
    hand.dispatchEvent(new Event('pointerup'));
    await vi.advanceTimersByTimeAsync(1000);
    expect(saves).toHaveLength(2);
  });
});

describe('flushing', () => {
  it('saves at once, resolves when the store has answered, and saves no second time', async () => {
    const { model, saves, answer, setSpeed } = setUp();
    setSpeed(2);
    let flushed = false;
    const flushing = model.flush().then(() => {
      flushed = true;
    });
    expect(speedsOf(saves)).toEqual([2]);
    await vi.advanceTimersByTimeAsync(0);
    expect(flushed).toBe(false);
    await answer();
    await flushing;
    expect(flushed).toBe(true);
    await vi.advanceTimersByTimeAsync(1000);
    expect(saves).toHaveLength(1);
  });

  it('waits for a save that is on its way', async () => {
    const { model, answer, setSpeed } = setUp();
    setSpeed(2);
    await vi.advanceTimersByTimeAsync(300);
    let flushed = false;
    const flushing = model.flush().then(() => {
      flushed = true;
    });
    await vi.advanceTimersByTimeAsync(0);
    expect(flushed).toBe(false);
    await answer();
    await flushing;
    expect(flushed).toBe(true);
  });

  it('has nothing to wait for when all is saved', async () => {
    const { model, saves } = setUp();
    await model.flush();
    expect(saves).toEqual([]);
  });
});

describe('when the page may be going away', () => {
  it('notes and saves the last change at once', () => {
    const { saves, drafts, setSpeed, hide } = setUp();
    setSpeed(2.7);
    hide();
    expect(speedsOf(drafts)).toEqual([2.7]);
    expect(speedsOf(saves)).toEqual([2.7]);
  });

  it('also while a save is on its way, or after one failed', async () => {
    const { drafts, answer, setSpeed, hide } = setUp();
    setSpeed(2);
    await vi.advanceTimersByTimeAsync(300);
    hide();
    expect(speedsOf(drafts)).toEqual([2]);
    await answer();
    await answer(FULL);
    hide();
    expect(speedsOf(drafts)).toEqual([2, 2]);
  });

  it('does nothing when all is saved', () => {
    const { saves, drafts, hide } = setUp();
    hide();
    expect([saves, drafts]).toEqual([[], []]);
  });
});
