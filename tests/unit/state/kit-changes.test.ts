import { describe, expect, it } from 'vitest';
import { DEFAULT_KIT } from '../../../src/engine/kit/kit';
import { createDeskModel } from '../../../src/state/desk-model';
import { createKitInPlay } from '../../../src/state/kit-in-play';
import { createKitModel } from '../../../src/state/kit-model';
import { DEFAULT_DESK } from '../../../src/store/default-desk';
import { DEMO_CATALOGUE } from '../../../src/store/demo-catalogue';
import { createMemoryStore } from '../../../src/store/memory-store';
import { createNoticeBoard } from '../../../src/store/notice-board';

const HOUSE = 'demo-cue-house';

/** The kit model over a memory store, with a clock that ticks at each look. */
async function setUp() {
  const store = createMemoryStore(createNoticeBoard());
  const desk = createDeskModel({ store, desk: DEFAULT_DESK });
  let timeMs = 1000;
  const now = () => {
    timeMs += 1;
    return timeMs;
  };
  const kit = createKitModel(createKitInPlay({ store, desk, shelves: DEMO_CATALOGUE }), {
    desk,
    now,
  });
  /** What the next visit would open with. */
  const reload = async () => {
    await kit.flush();
    return await store.loadAll();
  };
  return { kit, reload };
}

describe('marking a change', () => {
  it('is kept with its time, and can be taken back', async () => {
    const { kit, reload } = await setUp();
    expect(kit.markChange('cues', HOUSE, ' new tip ')).toEqual({ ok: true });
    kit.markChange('cues', HOUSE, 'new ferrule');
    const stored = (await reload()).cues.find(({ id }) => id === HOUSE);
    expect(stored?.changes).toEqual([
      { atMs: 1001, what: 'new tip' },
      { atMs: 1002, what: 'new ferrule' },
    ]);
    expect(kit.unmarkChange('cues', HOUSE)).toEqual({ ok: true });
    expect(kit.current.cues.value.changes).toEqual([{ atMs: 1001, what: 'new tip' }]);
  });

  it('leaves the numbers and where they come from', async () => {
    const { kit } = await setUp();
    kit.markChange('cues', HOUSE, 'new tip');
    expect(kit.kit.value).toEqual(DEFAULT_KIT);
    expect(kit.isDefault.value).toBe(true);
  });

  it.each(['', '  ', 'x'.repeat(61)])('needs a few words: not “%s”', async (what) => {
    const { kit } = await setUp();
    expect(kit.markChange('cues', HOUSE, what)).toMatchObject({ ok: false });
    expect(kit.current.cues.value.changes).toEqual([]);
  });

  it('is refused of what is not there, and so is taking back what was not marked', async () => {
    const { kit } = await setUp();
    expect(kit.markChange('cues', 'sold', 'new tip')).toMatchObject({ ok: false });
    expect(kit.unmarkChange('cues', HOUSE)).toMatchObject({ ok: false });
  });
});

describe('being like another', () => {
  it('is said of a record on the same shelf, or of none', async () => {
    const { kit, reload } = await setUp();
    expect(kit.setLike('cues', HOUSE, 'demo-cue-stiff')).toEqual({ ok: true });
    const stored = (await reload()).cues.find(({ id }) => id === HOUSE);
    expect(stored?.like).toBe('demo-cue-stiff');
    kit.setLike('cues', HOUSE, null);
    expect(kit.current.cues.value.like).toBeNull();
  });

  it('is refused of itself and of what is not on the shelf', async () => {
    const { kit } = await setUp();
    for (const id of [HOUSE, 'sold', 'demo-cloth-club']) {
      expect(kit.setLike('cues', HOUSE, id)).toMatchObject({ ok: false });
    }
    expect(kit.current.cues.value.like).toBeNull();
  });
});
