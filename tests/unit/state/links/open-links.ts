import { signal } from '@preact/signals';
import { solveAim } from '../../../../src/engine/direct/solve-aim';
import type { LinkPage } from '../../../../src/sensors/share-link';
import { createDeskModel } from '../../../../src/state/desk-model';
import { createKitInPlay } from '../../../../src/state/kit-in-play';
import { createKitModel } from '../../../../src/state/kit-model';
import { createLinksModel } from '../../../../src/state/links/create-links-model';
import { DEFAULT_DESK } from '../../../../src/store/default-desk';
import { DEMO_CATALOGUE } from '../../../../src/store/demo-catalogue';
import { createMemoryStore } from '../../../../src/store/memory-store';
import { createNoticeBoard } from '../../../../src/store/notice-board';
import type { Desk } from '../../../../src/store/records';
import type { SavedPosition } from '../../../../src/store/saved-position';
import { openChoose } from '../choose/open-choose';
import { openMeasure } from '../measure/open-measure';
import { openShot } from '../open-shot';

export const ADDRESS = 'https://example.org/leeway/';

interface Options {
  readonly desk?: Partial<Desk>;
  readonly positions?: readonly SavedPosition[];
  readonly page?: LinkPage;
  /** In place of the positions that are kept. */
  readonly savedHere?: readonly SavedPosition[];
}

/** Somebody's phone, as far as links go; aims are the engine's own. */
export async function openLinks(options: Options = {}) {
  const { desk: over = {}, positions, page = {}, savedHere } = options;
  const store = createMemoryStore(createNoticeBoard());
  const desk = createDeskModel({ store, desk: { ...DEFAULT_DESK, ...over } });
  const inPlay = createKitInPlay({ store, desk, shelves: DEMO_CATALOGUE });
  const kit = createKitModel(inPlay, { desk });
  // Nothing was ever measured on it.
  const { measure } = await openMeasure();
  const { model: shot } = openShot({}, {}, { desk, kit: kit.kit, solve: solveAim });
  const { model: choose, hired, rest } = await openChoose(positions ? { positions } : {});
  const saved: File[] = [];
  let ids = 0;
  const links = createLinksModel({
    desk,
    choose: savedHere ? { ...choose, saved: signal(savedHere) } : choose,
    kit,
    measure,
    shot,
    kept: inPlay.kept,
    page,
    sharing: {
      prefersSheet: false,
      canShare: () => false,
      share: async () => {},
      download: (file) => saved.push(file),
    },
    address: () => ADDRESS,
    newId: () => `came-${++ids}`,
  });
  /** All that is kept here and could be lost. */
  const all = () => ({
    shot: desk.shot.value,
    pocket: desk.pocket.value,
    choice: desk.choice.value,
    shelves: Object.values(kit.shelves).map((shelf) => shelf.value),
    positions: choose.saved.value,
    open: choose.open.value.id,
  });
  /** A link's address, as it is shared. */
  const shared = (what: string, withKit = false) => {
    const outgoing = links.outgoing(what, withKit);
    if (outgoing === null) throw new Error(`No ${what} to share`);
    return outgoing.url;
  };
  return { links, desk, kit, shot, choose, hired, rest, saved, all, shared };
}
