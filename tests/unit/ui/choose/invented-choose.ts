import { signal } from '@preact/signals';
import { directCut } from '../../../../src/engine/goal/goal';
import { WPA_POCKETS } from '../../../../src/engine/table/pocket-standard';
import { tableShape } from '../../../../src/engine/table/table-shape';
import { createChooseModel } from '../../../../src/state/choose/create-choose-model';
import { createDeskModel } from '../../../../src/state/desk-model';
import { createKitInPlay } from '../../../../src/state/kit-in-play';
import { DEFAULT_DESK } from '../../../../src/store/default-desk';
import { DEMO_CATALOGUE } from '../../../../src/store/demo-catalogue';
import { createMemoryStore } from '../../../../src/store/memory-store';
import { createNoticeBoard } from '../../../../src/store/notice-board';
import { NOTHING_CHOSEN, type SavedPosition } from '../../../../src/store/saved-position';
import { holdLater } from '../../state/choose/held-later';
import { type Answers, inventedWork } from '../../state/choose/invented-work';
import { KNOWN } from '../../state/choose/open-choose';
import { openShot } from '../../state/open-shot';
import { knownPlayer } from '../../state/player/open-player';

/** The bed of the table in play. */
export const SHAPE = tableShape(2.54, 1.27, WPA_POCKETS);

export const EMPTY: SavedPosition = {
  id: 'empty',
  name: 'Empty table',
  origin: 'by-hand',
  lengthM: 2.54,
  widthM: 1.27,
  balls: [],
  goal: NOTHING_CHOSEN,
  zone: null,
  changedAtMs: 2,
};

/** An invented position: a cut of the 3 into a far corner past the 11. */
export const CUT: SavedPosition = {
  ...EMPTY,
  id: 'cut',
  name: 'Cut into the corner',
  origin: 'invented',
  balls: [
    { name: 'cue', xM: -0.28, yM: -0.5 },
    { name: 3, xM: 0.12, yM: 0.42 },
    { name: 8, xM: 0.1, yM: -0.95 },
    { name: 11, xM: -0.4, yM: 0.62 },
    { name: 12, xM: -0.4 + 0.05715, yM: 0.62 },
  ],
  goal: directCut(3, 'far-right'),
  zone: { xM: -0.2, yM: -0.2, radiusM: 0.25 },
  changedAtMs: 1,
};

/** The models of Choose as the app has them, over a store in memory and ways that are invented. */
export function inventedChoose(position: SavedPosition = CUT, answers: Answers = {}) {
  const store = createMemoryStore(createNoticeBoard());
  const desk = createDeskModel({ store, desk: DEFAULT_DESK });
  const kit = createKitInPlay({ store, desk, shelves: DEMO_CATALOGUE });
  const shot = openShot().model;
  const player = knownPlayer(store, desk);
  const { later, rest } = holdLater();
  const knowledge = signal(KNOWN);
  const choose = createChooseModel({
    store,
    positions: [position, position === CUT ? EMPTY : CUT],
    table: kit.current.tables,
    knowledge,
    player,
    work: inventedWork(answers),
    shot,
    later,
  });
  return { choose, desk, kit, knowledge, shot, player, rest };
}
