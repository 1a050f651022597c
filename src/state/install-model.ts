import { computed, type ReadonlySignal, signal } from '@preact/signals';
import { watchInstallOffer } from '../sensors/install-offer';
import { findPlatform, isInstalled, type Platform, type PlatformPage } from '../sensors/platform';
import type { DraftStorage } from '../store/noted-text';

/** Having the app on the home screen: how, and what becomes of what is kept. */
export interface InstallModel {
  readonly platform: Platform;
  /** Whether it runs from the home screen, or was put there just now. */
  readonly isInstalled: ReadonlySignal<boolean>;
  /** Whether the browser will ask by itself when told to. */
  readonly canAsk: ReadonlySignal<boolean>;
  /** Whether this is the moment to speak of it: something has been measured, and nobody said no. */
  readonly isDue: ReadonlySignal<boolean>;
  /** Whether the app opened from the home screen with nothing of the person's in it. */
  readonly isFreshStart: ReadonlySignal<boolean>;
  ask(): Promise<void>;
  /** Not to be spoken of again. */
  dismiss(): void;
}

export interface InstallPorts {
  readonly page: PlatformPage & EventTarget;
  /** May throw or give null: then a dismissal lasts for this visit. */
  findStorage(): DraftStorage | null;
  readonly hasMeasured: ReadonlySignal<boolean>;
  /** Whether nothing the person made was there when the app opened. */
  readonly openedEmpty: boolean;
}

const KEY = 'leeway.install-dismissed';

export function createInstallModel(ports: InstallPorts): InstallModel {
  const { page, findStorage, hasMeasured, openedEmpty } = ports;
  const startedInstalled = isInstalled(page);
  const installed = signal(startedInstalled);
  const canAsk = signal(false);
  const dismissed = signal(readMark(findStorage));
  const offer = watchInstallOffer(
    page,
    () => {
      canAsk.value = offer.isThere;
    },
    () => {
      installed.value = true;
    },
  );
  return {
    platform: findPlatform(page),
    isInstalled: installed,
    canAsk,
    isDue: computed(() => !installed.value && !dismissed.value && hasMeasured.value),
    isFreshStart: computed(
      () => startedInstalled && openedEmpty && !dismissed.value && !hasMeasured.value,
    ),
    ask: offer.ask,
    dismiss() {
      dismissed.value = true;
      writeMark(findStorage);
    },
  };
}

function readMark(findStorage: InstallPorts['findStorage']): boolean {
  try {
    return (findStorage()?.getItem(KEY) ?? null) !== null;
  } catch {
    return false;
  }
}

function writeMark(findStorage: InstallPorts['findStorage']): void {
  try {
    findStorage()?.setItem(KEY, '1');
  } catch {
    // It will be spoken of once more at the next visit.
  }
}
