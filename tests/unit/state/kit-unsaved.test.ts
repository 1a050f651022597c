import { describe, expect, it } from 'vitest';
import { createDeskModel } from '../../../src/state/desk-model';
import { createKitModel } from '../../../src/state/kit-model';
import { DEFAULT_DESK } from '../../../src/store/default-desk';
import { DEMO_CATALOGUE } from '../../../src/store/demo-catalogue';
import { createMemoryStore } from '../../../src/store/memory-store';
import { createNoticeBoard } from '../../../src/store/notice-board';
import type { StorePort } from '../../../src/store/store-port';

const HOUSE = 'demo-cue-house';

/** The kit model over a store that puts records this way. */
function setUp(putRecord: StorePort['putRecord']) {
  const store = { ...createMemoryStore(createNoticeBoard()), putRecord };
  const desk = createDeskModel({ store, desk: DEFAULT_DESK });
  return { kit: createKitModel({ store, desk, shelves: DEMO_CATALOGUE }) };
}

describe('a change that cannot be saved', () => {
  it('stays on screen and says so, until one can', async () => {
    let room = false;
    const message = 'No room left.';
    const { kit } = setUp(async () =>
      room ? { ok: true } : { ok: false, reason: 'full', message },
    );
    kit.edit('cues', HOUSE, 'massRatio', 30);
    await kit.flush();
    expect(kit.kit.value.massRatio).toBe(30);
    expect(kit.saveProblem.value).toBe(message);
    room = true;
    kit.edit('cues', HOUSE, 'massRatio', 31);
    await kit.flush();
    expect(kit.saveProblem.value).toBeNull();
  });

  it('is tried again by itself when the rest is saved, and told of until then', async () => {
    let room = false;
    const message = 'No room left.';
    const saved: string[] = [];
    const { kit } = setUp(async (_, { id }) => {
      if (!room && id === HOUSE) return { ok: false, reason: 'full', message };
      saved.push(id);
      return { ok: true };
    });
    kit.edit('cues', HOUSE, 'massRatio', 30);
    kit.edit('cues', 'demo-cue-stiff', 'massRatio', 51);
    await kit.flush();
    expect(kit.saveProblem.value).toBe(message);
    room = true;
    await kit.flush();
    expect(saved).toEqual(['demo-cue-stiff', HOUSE]);
    expect(kit.saveProblem.value).toBeNull();
    await kit.flush();
    expect(saved).toHaveLength(2);
  });
});
