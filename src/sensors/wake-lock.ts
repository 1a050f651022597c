/** A lock that the browser granted, and may take back at any time. */
interface GrantedLock {
  release(): Promise<void>;
  addEventListener(type: 'release', listener: () => void): void;
}

/** What is needed of a page; `window` is one. */
export interface WakeLockPage {
  /** Some browsers have no wake lock, or none in an installed app. */
  readonly navigator: {
    readonly wakeLock?: { request(type: 'screen'): Promise<GrantedLock> };
  };
  readonly document: Pick<Document, 'visibilityState' | 'addEventListener' | 'removeEventListener'>;
}

/**
 * `off`: nobody wants it. `held`: the screen stays lit. `wanted`: asked for and not granted, or
 * taken back, as a browser does to a hidden page and while the battery is low: the screen may go
 * dark. `unavailable`: wanted, and this browser cannot: the screen will go dark.
 */
export type WakeLockState = 'off' | 'held' | 'wanted' | 'unavailable';

export interface WakeLock {
  /** Call it within a tap. Calling it again asks again where the lock was refused. */
  hold(): void;
  release(): void;
  readonly state: WakeLockState;
}

/**
 * Keeps the screen awake between `hold` and `release`. A lock that the browser takes back stays
 * wanted, and is asked for again when the page comes back into view. Nothing is ever thrown: what
 * came of it is in the state.
 *
 * @param onChange called after every change of state
 */
export function createWakeLock(page: WakeLockPage, onChange: () => void = () => {}): WakeLock {
  const { navigator, document } = page;
  let isWanted = false;
  let granted: GrantedLock | null = null;
  let isAsking = false;
  let state: WakeLockState = 'off';

  const settle = () => {
    const next = stateOf(isWanted, granted !== null, navigator.wakeLock !== undefined);
    if (next === state) return;
    state = next;
    onChange();
  };

  const letGo = () => {
    granted?.release().catch(() => undefined);
    granted = null;
  };

  const keep = (lock: GrantedLock) => {
    granted = lock;
    lock.addEventListener('release', () => {
      if (granted === lock) granted = null;
      settle();
    });
    if (!isWanted) letGo();
  };

  const ask = async () => {
    if (!isWanted || granted !== null || isAsking) return;
    isAsking = true;
    try {
      const lock = await navigator.wakeLock?.request('screen');
      if (lock) keep(lock);
    } catch {
      // Refused, for the page is hidden or the battery low: it stays wanted.
    } finally {
      isAsking = false;
      settle();
    }
  };

  const onVisibility = () => {
    if (document.visibilityState === 'visible') void ask();
  };

  return {
    hold() {
      isWanted = true;
      document.addEventListener('visibilitychange', onVisibility);
      settle();
      void ask();
    },
    release() {
      isWanted = false;
      document.removeEventListener('visibilitychange', onVisibility);
      letGo();
      settle();
    },
    get state() {
      return state;
    },
  };
}

function stateOf(isWanted: boolean, isGranted: boolean, isAvailable: boolean): WakeLockState {
  if (!isWanted) return 'off';
  if (!isAvailable) return 'unavailable';
  return isGranted ? 'held' : 'wanted';
}
