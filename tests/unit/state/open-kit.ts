import { createDeskModel } from '../../../src/state/desk-model';
import { createKitInPlay } from '../../../src/state/kit-in-play';
import { createKitModel } from '../../../src/state/kit-model';
import type { ShelfContents } from '../../../src/store/contents';
import { DEFAULT_DESK } from '../../../src/store/default-desk';
import { DEMO_CATALOGUE } from '../../../src/store/demo-catalogue';
import { createMemoryStore } from '../../../src/store/memory-store';
import { createNoticeBoard } from '../../../src/store/notice-board';
import type { StorePort } from '../../../src/store/store-port';

/** A kit over a store in memory, with what of it is to behave otherwise. */
export async function openKit(
  change: Partial<StorePort> = {},
  shelves: ShelfContents = DEMO_CATALOGUE,
) {
  const memory = createMemoryStore(createNoticeBoard());
  const store: StorePort = { ...memory, ...change };
  const desk = createDeskModel({ store, desk: DEFAULT_DESK });
  let ids = 0;
  const newId = () => {
    ids += 1;
    return `new-${ids}`;
  };
  const kit = createKitModel(createKitInPlay({ store, desk, shelves }), { desk, newId });
  /** What the next visit would open with. */
  const reload = async () => {
    await Promise.all([kit.flush(), desk.flush()]);
    return await memory.loadAll();
  };
  const idsOn = (shelf: keyof ShelfContents) => kit.shelves[shelf].value.map(({ id }) => id);
  return { kit, desk, reload, idsOn };
}
