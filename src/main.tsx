import './ui/theme.css';
import './ui/base.css';
import { computed, signal } from '@preact/signals';
import { render } from 'preact';
import { nearestSpeed } from './engine/aim/nearest-speed';
import { playAim } from './engine/aim/play-aim';
import { solveAim } from './engine/aim/solve-aim';
import { traceCueBall } from './engine/aim/trace-cue-ball';
import { UNMEASURED } from './engine/room/kit-spread';
import { roomForError } from './engine/room/room-for-error';
import { registerServiceWorker } from './offline/register-service-worker';
import { createDeskModel } from './state/desk-model';
import { kitEffects } from './state/kit-effects';
import { createKitModel } from './state/kit-model';
import { createRoomModel } from './state/room-model';
import { createShotModel } from './state/shot-model';
import { createStore } from './store/create-store';
import { onPageHide } from './store/on-page-hide';
import { App } from './ui/App';
import { createLaterAtRest } from './ui/later-at-rest';
import { createRouter } from './ui/route';

const store = createStore();
const { desk: loadedDesk, shelves } = await store.loadAll();
const desk = createDeskModel({ store, desk: loadedDesk, onPageHide });
const kit = createKitModel({ store, desk, shelves });
const shot = createShotModel({
  solve: solveAim,
  play: playAim,
  trace: traceCueBall,
  nearestSpeed,
  kit: kit.kit,
  tableLengthM: computed(() => kit.current.tables.value.lengthM),
  desk,
});

const room = createRoomModel({
  lastAnswer: shot.lastAnswer,
  desk,
  // No kit can be measured yet, whatever its numbers.
  spread: signal(UNMEASURED),
  assess: roomForError,
  later: createLaterAtRest(window),
});

const storageLines = signal<readonly string[]>([]);
store.onNotice(({ message }) => {
  if (!storageLines.peek().includes(message)) {
    storageLines.value = [...storageLines.peek(), message];
  }
});

const applyUpdate = signal<(() => void) | null>(null);
const isReadyOffline = signal(false);
void registerServiceWorker(
  {
    onUpdateReady(apply) {
      applyUpdate.value = apply;
    },
    onOfflineReady() {
      isReadyOffline.value = true;
    },
  },
  () => Promise.all([desk.flush(), kit.flush()]),
);

const holder = document.getElementById('app');
if (!holder) throw new Error('The page has no element #app');
render(
  <App
    app={{
      shot,
      room,
      kit,
      effects: computed(() => kitEffects(kit.kit.value, solveAim)),
      desk,
      router: createRouter(window),
      news: { applyUpdate, isReadyOffline, storageLines },
    }}
  />,
  holder,
);
