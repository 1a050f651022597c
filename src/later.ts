import { dropStoredApp } from './offline/drop-stored-app';
import { findSpeaker } from './sensors/find-speaker';
import { sharePort } from './sensors/share-port';
import type { createStorageRoom } from './sensors/storage-room';
import type { CopyPlaces } from './state/backup/copy-places';
import type { SaveGate } from './state/backup/save-gate';
import { createUndoneMark } from './state/backup/undone-mark';
import { createBackupModel } from './state/backup-model';
import { createCardsModel } from './state/cards/cards-model';
import { createChooseModel } from './state/choose/create-choose-model';
import type { createKitInPlay } from './state/kit-in-play';
import { createKitModel } from './state/kit-model';
import { createLinksModel } from './state/links/create-links-model';
import { createLogModel, type LogPorts } from './state/log/log-model';
import { createAwakeModel } from './state/measure/awake-model';
import type { createKnownKit } from './state/measure/create-known-kit';
import { createMeasureModel, type MeasurePorts } from './state/measure/create-measure-model';
import { createPlayerFile } from './state/player/player-file';
import { createRepairModel } from './state/repair-model';
import { findDigest } from './store/backup/backup-format';
import { type FindStorage, notedText } from './store/noted-text';
import type { Loaded } from './store/store-port';
import type { AppModels, FirstModels } from './ui/app-models';
import type { Work } from './worker/engine-pool';

/** What the first screen does without, and the other places do not. */
export interface LaterPorts {
  readonly gate: SaveGate;
  readonly loaded: Loaded;
  readonly places: CopyPlaces;
  readonly storageRoom: ReturnType<typeof createStorageRoom>;
  readonly kit: ReturnType<typeof createKitInPlay>;
  readonly findStorage: FindStorage;
  readonly known: LogPorts['known'];
  readonly measure: ReturnType<typeof createKnownKit>;
  /** Compares ways, with every hand there is; null where the browser has no workers. */
  readonly waysWork: Work | null;
  /** Does what is worked out at rest. */
  readonly fitWork: Work | null;
  readonly fit: MeasurePorts['fit'];
  /** Does work once the hand rests, unless called off by what it returns. */
  readonly later: (work: () => void) => () => void;
  readonly flush: () => Promise<unknown>;
}

/** The models of all places: those of the first screen, and the rest. */
export function completeApp(first: FirstModels, ports: LaterPorts): AppModels {
  const { gate, loaded, kit, known, measure, fitWork, fit, flush } = ports;
  const { shot, desk, player, nowMs: now } = first;
  const [sharing, digest] = [sharePort(), findDigest()];
  const { reload } = first.news;
  const table = kit.current.tables;
  const { knowledge } = measure;
  const choose = createChooseModel({
    store: gate.store,
    positions: loaded.positions,
    table,
    knowledge,
    player,
    work: ports.waysWork,
    shot,
    later: ports.later,
    speaker: findSpeaker(window),
  });
  const wholeKit = createKitModel(kit, { desk });
  const wholeMeasure = createMeasureModel(measure, {
    desk,
    fit,
    foresee: fitWork && ((job) => fitWork('foresee', job)),
  });
  return {
    ...first,
    kit: wholeKit,
    player: { ...player, file: createPlayerFile({ player, sharing, digest, now }) },
    choose,
    log: createLogModel({
      shot,
      desk,
      choose,
      player,
      known,
      knowledge,
      table,
      work: fitWork,
      later: ports.later,
    }),
    measure: wholeMeasure,
    links: createLinksModel({
      desk,
      shot,
      choose,
      kit: wholeKit,
      measure: wholeMeasure,
      kept: kit.kept,
      page: navigator,
      sharing,
      address: () => location.href.split(/[?#]/, 1)[0] ?? '',
    }),
    cards: createCardsModel({
      kit,
      measure,
      desk,
      sharing,
      // Some browsers, mostly on phones, do not print.
      print: typeof window.print === 'function' ? () => window.print() : null,
      soon(work) {
        const timer = setTimeout(work);
        return () => clearTimeout(timer);
      },
    }),
    awake: createAwakeModel(window),
    backup: createBackupModel({
      gate,
      flush,
      sharing,
      digest,
      undone: createUndoneMark(ports.findStorage),
      now,
      reload,
      room: ports.storageRoom,
      places: ports.places,
    }),
    repair: createRepairModel({
      drop: dropStoredApp,
      flush,
      reload,
      done: notedText(() => globalThis.sessionStorage ?? null, 'leeway.repaired'),
      now,
    }),
  };
}
