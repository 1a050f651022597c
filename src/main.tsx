import { takenOver } from './last-screen';
import './ui/theme.css';
import './ui/base.css';
import { computed, signal } from '@preact/signals';
import { render } from 'preact';
import { playAim } from './engine/direct/play-aim';
import { solveAim } from './engine/direct/solve-aim';
import { traceCueBall } from './engine/direct/trace-cue-ball';
import { goesAsMeant, nearestSpeed } from './engine/room/nearest-speed';
import { trustOwnScripts } from './offline/own-scripts';
import { registerServiceWorker } from './offline/register-service-worker';
import { rowChannel } from './offline/tab-channel';
import { afterFrame, whenIdle } from './sensors/idle';
import { createStorageRoom } from './sensors/storage-room';
import { copyPlaces, loadKept } from './state/backup/copy-places';
import { createSaveGate } from './state/backup/save-gate';
import { createDeskModel } from './state/desk-model';
import { createInstallModel } from './state/install-model';
import { createKitInPlay } from './state/kit-in-play';
import { createLate, fetchWhenIdle } from './state/late';
import { createLawNews } from './state/law-news';
import { createKnownKit } from './state/measure/create-known-kit';
import { knownAlongShot } from './state/measure/known-along-shot';
import { createNotedKnowledge } from './state/measure/noted-knowledge';
import { createNotedAnswers } from './state/noted-answers';
import { createNotedRoom } from './state/noted-room';
import { createNotedPlayers } from './state/player/noted-players';
import { createPlayerModel } from './state/player/player-model';
import { noteRecentShots } from './state/recent-shots';
import { createRoomModel } from './state/room-model';
import { createScreenKeeper } from './state/screen-keeper';
import { createShotModel } from './state/shot-model';
import { createStorageNotices } from './state/storage-notices';
import { createTabClashes } from './state/tab-clashes';
import { createStore } from './store/create-store';
import { freshId } from './store/fresh-id';
import { notedText } from './store/noted-text';
import { onPageGone, onPageHide } from './store/on-page-hide';
import { App } from './ui/App';
import type { FirstModels } from './ui/app-models';
import { createLateParts, inOrder } from './ui/late-parts';
import { createLaterAtRest } from './ui/later-at-rest';
import { keepScreen, SCREEN_KEY } from './ui/noted-screen';
import { createRouter } from './ui/route';
import { wearPreferences } from './ui/wear-preferences';
import { createEnginePool } from './worker/engine-pool';
import engineScript from './worker/engine-worker?worker&url';
import { findEngineWorker, workerCount } from './worker/find-engine-worker';
import { createFitClient } from './worker/fit-client';
import { createRoomClient } from './worker/room-client';

/** Puts the first screen together; what it does without comes once it stands. */
async function start(holder: HTMLElement): Promise<void> {
  const findStorage = () => globalThis.localStorage ?? null;
  const places = copyPlaces(findStorage, () => globalThis.sessionStorage ?? null);
  const storageRoom = createStorageRoom(navigator.storage);
  const screenNote = notedText(findStorage, SCREEN_KEY);
  const screen = createScreenKeeper({
    note: screenNote,
    by: freshId(),
    noteScreen: () => keepScreen(screenNote, holder),
    afterFrame: () => afterFrame(window),
  });
  const gate = createSaveGate(
    createStore({
      findDraftStorage: findStorage,
      onPageGone,
      channel: rowChannel(),
      fetchMemory: () => import('./store/memory-store'),
    }),
    storageRoom.ask,
    screen,
  );
  const { store } = gate;
  const loaded = await loadKept(store, places, () => import('./state/backup/second-copy'));
  const { desk: loadedDesk, attempts, positions, players, played } = loaded;
  const serviceWorker = new URL('./sw.js', document.baseURI).href;
  const trust = trustOwnScripts([engineScript, serviceWorker]);
  const makeWorker = findEngineWorker(trust(engineScript));
  const poolOf = (size: number) => makeWorker && createEnginePool(makeWorker, size);
  const desk = createDeskModel({
    store,
    desk: loadedDesk,
    onPageHide,
    onceUp: createLaterAtRest(window, 0),
  });
  const kit = createKitInPlay({ store, desk, shelves: loaded });
  const fitWork = poolOf(1);
  const player = createPlayerModel({
    store,
    desk,
    players,
    played,
    report: fitWork && ((job) => fitWork('learn', job)),
    noted: createNotedPlayers(notedText(findStorage, 'leeway.players'), import.meta.url),
    later: createLaterAtRest(window),
  });
  const fit = fitWork && createFitClient(fitWork);
  const measure = createKnownKit({
    store,
    attempts,
    kit,
    desk,
    profile: player.roughProfile,
    fit,
    async workReport(...asked) {
      const { workReport } = await import('./state/measure/work-report');
      return await workReport(...asked);
    },
    noted: createNotedKnowledge(notedText(findStorage, 'leeway.known'), import.meta.url),
    later: createLaterAtRest(window),
  });
  const knownAlong = (headingRad: number | null) =>
    knownAlongShot(measure.knowledge.value, kit.current.tables.value.bedSlope, headingRad);
  const runs = createLate(async () => (await import('./units/table-run')).TABLE_RUNS, window);
  // Only who has speeds told in lengths needs it for the first answer.
  if (loadedDesk.preferences.speedUnit === 'lengths') await runs.fetch();
  const headingRad = computed(() => desk.shot.value.headingRad);
  const known = computed(() => knownAlong(headingRad.value));
  const knownKit = computed(() => known.value.kit);
  const answers = createNotedAnswers({
    note: notedText(findStorage, 'leeway.answers'),
    build: import.meta.url,
    solve: solveAim,
  });
  const shot = createShotModel({
    solve: answers.solve,
    play: playAim,
    trace: traceCueBall,
    nearestSpeed,
    nextFrame: requestAnimationFrame.bind(window),
    frameTime: () => document.timeline.currentTime,
    goes: goesAsMeant,
    kit: knownKit,
    isKitSettled: measure.isSettled,
    kitAlong: (headingRad) => knownAlong(headingRad).kit,
    tableLengthM: computed(() => kit.current.tables.value.lengthM),
    tableRuns: runs.here,
    desk,
  });
  const notedRoom = createNotedRoom({
    note: notedText(findStorage, 'leeway.room'),
    build: import.meta.url,
    assess: createRoomClient(poolOf(1)),
  });
  const room = createRoomModel({
    lastAnswer: shot.lastAnswer,
    desk,
    player,
    known,
    spreadBefore: computed(() => measure.before.value.spread),
    assess: notedRoom.assess,
    recall: notedRoom.recall,
    later: createLaterAtRest(window),
  });
  noteRecentShots({ lastAnswer: shot.lastAnswer, desk, later: createLaterAtRest(window) });
  onPageHide(() => {
    answers.keep();
    notedRoom.keep();
    const isAtRest = desk.saving.peek() === 'saved' && !shot.isHeld.peek() && room.isFresh.peek();
    if (store.keeps && isAtRest && !shot.stale.peek() && !shot.laid.peek()) screen.keep();
  });

  const reload = () => location.reload();
  const flush = () =>
    Promise.all([
      desk.flush(),
      kit.flush(),
      measure.flush(),
      player.flush(),
      models.here.peek()?.choose.flush(),
    ]);
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
  const router = createRouter(window);
  const [applyUpdate, isReadyOffline] = [signal<(() => void) | null>(null), signal(false)];
  const alteredFile = signal<string | null>(null);
  const first: FirstModels = {
    shot,
    room,
    player,
    kit,
    measure,
    nowMs: Date.now,
    install,
    desk,
    router,
    news: {
      applyUpdate,
      isReadyOffline,
      alteredFile,
      storage: createStorageNotices({ store, flush }),
      tabs: createTabClashes(store),
      law: createLawNews(
        desk,
        computed(() => measure.attempts.value.length > 0),
      ),
      copy: computed(() => models.here.value?.backup.copy ?? null),
      nowMs: Date.now,
      reload,
      openBackup: () => router.visit('kit', 'backup'),
    },
  };
  const models = createLate(async () => {
    const { completeApp } = await import('./later');
    const waysWork = poolOf(workerCount(navigator.hardwareConcurrency));
    const later = createLaterAtRest(window);
    const what = { gate, loaded, places, storageRoom, findStorage, kit, known, later };
    return completeApp(first, { ...what, waysWork, fitWork, fit, flush, measure });
  }, window);
  const late = createLateParts(models, window);
  wearPreferences(desk.preferences);
  render(<App app={first} late={late} />, holder);
  takenOver();
  // None of this is to hold the first frame up.
  await afterFrame(window);
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
  await fetchWhenIdle([runs, ...inOrder(late)], () => whenIdle(window));
}

const holder = document.getElementById('app');
if (!holder) throw new Error('The page has no element #app');
void start(holder);
