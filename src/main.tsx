import './ui/theme.css';
import './ui/base.css';
import { computed, signal } from '@preact/signals';
import { render } from 'preact';
import { playAim } from './engine/direct/play-aim';
import { solveAim } from './engine/direct/solve-aim';
import { traceCueBall } from './engine/direct/trace-cue-ball';
import { goesAsMeant, nearestSpeed } from './engine/room/nearest-speed';
import { dropStoredApp } from './offline/drop-stored-app';
import { trustOwnScripts } from './offline/own-scripts';
import { registerServiceWorker } from './offline/register-service-worker';
import { rowChannel } from './offline/tab-channel';
import { sharePort } from './sensors/share-port';
import { createStorageRoom } from './sensors/storage-room';
import { createSaveGate } from './state/backup/save-gate';
import { copyPlaces, runFromCopy } from './state/backup/second-copy';
import { createUndoneMark } from './state/backup/undone-mark';
import { createBackupModel } from './state/backup-model';
import { createChooseModel } from './state/choose/create-choose-model';
import { createDeskModel } from './state/desk-model';
import { createInstallModel } from './state/install-model';
import { kitEffects } from './state/kit-effects';
import { createKitModel } from './state/kit-model';
import { createLawNews } from './state/law-news';
import { createLogModel } from './state/log/log-model';
import { createAwakeModel } from './state/measure/awake-model';
import { createMeasureModel } from './state/measure/create-measure-model';
import { knownAlongShot } from './state/measure/known-along-shot';
import { createNotedKnowledge } from './state/measure/noted-knowledge';
import { createNotedPlayers } from './state/player/noted-players';
import { createPlayerModel } from './state/player/player-model';
import { noteRecentShots } from './state/recent-shots';
import { createRepairModel } from './state/repair-model';
import { createRoomModel } from './state/room-model';
import { createShotModel } from './state/shot-model';
import { createStorageNotices } from './state/storage-notices';
import { createTabClashes } from './state/tab-clashes';
import { findDigest } from './store/backup/backup-format';
import { createStore } from './store/create-store';
import { notedText } from './store/noted-text';
import { onPageGone, onPageHide } from './store/on-page-hide';
import { App } from './ui/App';
import { createLaterAtRest } from './ui/later-at-rest';
import { createRouter } from './ui/route';
import { createEnginePool } from './worker/engine-pool';
import engineScript from './worker/engine-worker?worker&url';
import { findEngineWorker, workerCount } from './worker/find-engine-worker';
import { createFitClient } from './worker/fit-client';
import { createRoomClient } from './worker/room-client';

const findStorage = () => globalThis.localStorage ?? null;
const places = copyPlaces(findStorage, () => globalThis.sessionStorage ?? null);
const storageRoom = createStorageRoom(navigator.storage);
const gate = createSaveGate(
  createStore({ findDraftStorage: findStorage, onPageGone, channel: rowChannel() }),
  storageRoom.ask,
);
const { store } = gate;
const loaded = await runFromCopy(store, await store.loadAll(), places);
const { desk: loadedDesk, attempts, positions, players, played } = loaded;
const serviceWorker = new URL('./sw.js', document.baseURI).href;
const trust = trustOwnScripts([engineScript, serviceWorker]);
const makeWorker = findEngineWorker(trust(engineScript));
const [sharing, digest] = [sharePort(), findDigest()];
const desk = createDeskModel({ store, desk: loadedDesk, onPageHide });
const kit = createKitModel({ store, desk, shelves: loaded });
const fitWork = makeWorker && createEnginePool(makeWorker, 1);
const player = createPlayerModel({
  store,
  desk,
  players,
  played,
  report: fitWork && ((job) => fitWork('learn', job)),
  noted: createNotedPlayers(notedText(findStorage, 'leeway.players'), import.meta.url),
  sharing,
  digest,
  later: createLaterAtRest(window),
});
const measure = createMeasureModel({
  store,
  attempts,
  kit,
  desk,
  profile: player.roughProfile,
  fit: fitWork && createFitClient(fitWork),
  foresee: fitWork && ((job) => fitWork('foresee', job)),
  noted: createNotedKnowledge(notedText(findStorage, 'leeway.known'), import.meta.url),
  later: createLaterAtRest(window),
});
const knownAlong = (headingRad: number | null) =>
  knownAlongShot(measure.knowledge.value, kit.current.tables.value.bedSlope, headingRad);
const headingRad = computed(() => desk.shot.value.headingRad);
const known = computed(() => knownAlong(headingRad.value));
const knownKit = computed(() => known.value.kit);
const shot = createShotModel({
  solve: solveAim,
  play: playAim,
  trace: traceCueBall,
  nearestSpeed,
  goes: goesAsMeant,
  kit: knownKit,
  isKitSettled: measure.isSettled,
  kitAlong: (headingRad) => knownAlong(headingRad).kit,
  tableLengthM: computed(() => kit.current.tables.value.lengthM),
  desk,
});

const room = createRoomModel({
  lastAnswer: shot.lastAnswer,
  desk,
  player,
  known,
  spreadBefore: computed(() => measure.before.value.spread),
  assess: createRoomClient(makeWorker && createEnginePool(makeWorker, 1)),
  later: createLaterAtRest(window),
});

const choose = createChooseModel({
  store,
  positions,
  table: kit.current.tables,
  knowledge: measure.knowledge,
  player,
  work: makeWorker && createEnginePool(makeWorker, workerCount(navigator.hardwareConcurrency)),
  shot,
  later: createLaterAtRest(window),
});

const log = createLogModel({
  shot,
  desk,
  choose,
  player,
  known,
  knowledge: measure.knowledge,
  table: kit.current.tables,
  work: fitWork,
});

noteRecentShots({ lastAnswer: shot.lastAnswer, desk, later: createLaterAtRest(window) });

const reload = () => location.reload();
const flush = () =>
  Promise.all([desk.flush(), kit.flush(), measure.flush(), choose.flush(), player.flush()]);
const backup = createBackupModel({
  gate,
  flush,
  sharing,
  digest,
  undone: createUndoneMark(findStorage),
  now: Date.now,
  reload,
  room: storageRoom,
  places,
});

const repair = createRepairModel({
  drop: dropStoredApp,
  flush,
  reload,
  done: notedText(() => globalThis.sessionStorage ?? null, 'leeway.repaired'),
  now: Date.now,
});

const install = createInstallModel({
  page: window,
  findStorage,
  hasMeasured: computed(() => measure.lastReadAtMs.value !== null),
  openedEmpty:
    attempts.length === 0 &&
    played.length === 0 &&
    players.every(({ madeOf10 }) => madeOf10 === null) &&
    kit.isDefault.peek() &&
    positions.every(({ origin }) => origin === 'invented'),
});

const storage = createStorageNotices({ store, flush });
const tabs = createTabClashes(store);
const router = createRouter(window);
const openBackup = () => {
  router.goTo('kit');
  router.open('backup');
};

const applyUpdate = signal<(() => void) | null>(null);
const isReadyOffline = signal(false);
const alteredFile = signal<string | null>(null);
registerServiceWorker(
  trust(serviceWorker),
  {
    onUpdateReady(apply) {
      applyUpdate.value = apply;
    },
    onLooked(isReady) {
      isReadyOffline.value = isReady;
      if (isReady) alteredFile.value = null;
    },
    onAltered(file) {
      alteredFile.value = file;
    },
  },
  flush,
);

const holder = document.getElementById('app');
if (!holder) throw new Error('The page has no element #app');
render(
  <App
    app={{
      shot,
      room,
      choose,
      player,
      log,
      kit,
      effects: computed(() => kitEffects(knownKit.value, solveAim)),
      measure,
      backup,
      repair,
      awake: createAwakeModel(window),
      nowMs: Date.now,
      install,
      desk,
      router,
      news: {
        applyUpdate,
        isReadyOffline,
        alteredFile,
        storage,
        tabs,
        law: createLawNews(
          desk,
          computed(() => measure.attempts.value.length > 0),
        ),
        copy: backup.copy,
        nowMs: Date.now,
        reload,
        openBackup,
      },
    }}
  />,
  holder,
);
