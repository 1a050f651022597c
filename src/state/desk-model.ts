import { computed, type ReadonlySignal, signal } from '@preact/signals';
import { INPUT_RANGES } from '../engine/direct/input-ranges';
import type { Shot } from '../engine/direct/shot';
import type { Choice, Desk, LaidShot, Pocket, Preferences, ShelfName } from '../store/records';
import type { StorePort } from '../store/store-port';
import { joinRows } from '../store/tabs/join-rows';
import { createDeskSaver, type OnceUp, type SaveState } from './desk-saver';
import { withRecentShot } from './recent-shots';

/** What the app opens with: the shot, the kit chosen, and how the person likes to read it. */
export interface DeskModel {
  readonly shot: ReadonlySignal<LaidShot>;
  readonly heldShot: ReadonlySignal<LaidShot | null>;
  readonly choice: ReadonlySignal<Choice>;
  readonly preferences: ReadonlySignal<Preferences>;
  readonly pocket: ReadonlySignal<Pocket>;
  /** Who plays; the player model looks after who that can be. */
  readonly playerId: ReadonlySignal<string>;
  /** The version of the engine's laws whose changes have been told of. */
  readonly law: ReadonlySignal<number>;
  /** What was asked lately, no two alike; the newest first. */
  readonly recentShots: ReadonlySignal<readonly Shot[]>;
  /** Whether what is on screen is also in the store. */
  readonly saving: ReadonlySignal<SaveState>;
  setShot(shot: LaidShot): void;
  /** Sets a shot aside to compare with: the present one where none is given. */
  holdShot(shot?: LaidShot): void;
  dropHeldShot(): void;
  setPreference<P extends keyof Preferences>(name: P, value: Preferences[P]): void;
  setPocket(pocket: Pocket): void;
  setPlayer(id: string): void;
  setLaw(law: number): void;
  /** Remembers a shot among the recent ones, wherever it lay, in place of one like it. */
  noteShot(shot: LaidShot): void;
  /** Puts a record in play; the kit model checks that it is on the shelf. */
  choose(shelf: ShelfName, id: string): void;
  /** Saves at once whatever is not saved yet; resolves when the store has answered. */
  flush(): Promise<void>;
}

export interface DeskModelPorts {
  readonly store: Pick<StorePort, 'saveDesk' | 'draftDesk' | 'onElsewhere'>;
  /** As loaded. */
  readonly desk: Desk;
  /** Calls back whenever the page may be about to go away. */
  readonly onPageHide?: (listener: () => void) => () => void;
  /** Left out, no finger is ever down. */
  readonly onceUp?: OnceUp;
}

/** Without waiting, as where there are no fingers. */
const atOnce: OnceUp = (work) => {
  work();
  return () => {};
};

/**
 * The desk starts as loaded, and every change is saved within a third of a second, or once the finger
 * that makes it is up. What is not saved yet where the page is left or hidden is noted, and saved.
 */
export function createDeskModel(ports: DeskModelPorts): DeskModel {
  const { store, desk: loaded, onPageHide, onceUp = atOnce } = ports;
  const desk = signal(loaded);
  const saver = createDeskSaver(store, () => desk.peek(), onceUp);
  onPageHide?.(saver.saveBeforeHiding);
  store.onElsewhere((news) => {
    if (news.kind !== 'row' || news.store !== 'desk' || !news.row) return;
    const mine = desk.peek();
    desk.value = joinRows(news.was ?? mine, mine, news.row).row;
  });

  const change = (part: Partial<Desk>) => {
    desk.value = { ...desk.peek(), ...part };
    saver.noteChange();
  };

  return {
    shot: computed(() => desk.value.shot),
    heldShot: computed(() => desk.value.heldShot),
    choice: computed(() => desk.value.choice),
    preferences: computed(() => desk.value.preferences),
    pocket: computed(() => desk.value.pocket),
    playerId: computed(() => desk.value.playerId),
    law: computed(() => desk.value.law),
    recentShots: computed(() => desk.value.recentShots),
    saving: saver.state,
    setShot(shot) {
      const before = desk.peek().shot;
      if (shot !== before) change({ shot: { ...unknownFieldsOf(before), ...shot } });
    },
    holdShot: (shot = desk.peek().shot) => change({ heldShot: shot }),
    dropHeldShot: () => change({ heldShot: null }),
    setPreference(name, value) {
      const { preferences } = desk.peek();
      if (preferences[name] === value) return;
      // Whoever reads distances in inches reads small lengths so, too, until they say otherwise.
      const also = name === 'distanceUnit' &&
        (value === 'in' || value === 'ft') && { lengthUnit: 'in' as const };
      change({ preferences: { ...preferences, ...also, [name]: value } });
    },
    setPocket(pocket) {
      if (pocket !== desk.peek().pocket) change({ pocket });
    },
    setPlayer(playerId) {
      if (playerId !== desk.peek().playerId) change({ playerId });
    },
    setLaw(law) {
      if (law !== desk.peek().law) change({ law });
    },
    noteShot({ headingRad: _laid, ...shot }) {
      const { recentShots } = desk.peek();
      const noted = withRecentShot(recentShots, shot);
      if (noted !== recentShots) change({ recentShots: noted });
    },
    choose(shelf, id) {
      const { choice } = desk.peek();
      if (choice[shelf] !== id) change({ choice: { ...choice, [shelf]: id } });
    },
    flush: saver.flush,
  };
}

/** What a newer version of the app may have stored with the shot, which this one must not drop. */
function unknownFieldsOf(shot: Shot): Record<string, unknown> {
  return Object.fromEntries(Object.entries(shot).filter(([name]) => !(name in INPUT_RANGES)));
}
