import { computed, type ReadonlySignal } from '@preact/signals';
import { MODEL_VERSION } from '../engine/fit/model-version';
import type { DeskModel } from './desk-model';

/** That the app's laws have changed since a person last looked, until it was seen. */
export interface LawNews {
  /** The version last told of, and whether readings were fitted anew; null where nothing changed. */
  readonly since: ReadonlySignal<{ readonly law: number; readonly hasReadings: boolean } | null>;
  /** That was seen: it is not told again, here or in any backup of this desk. */
  seen(): void;
}

/** @param hasReadings whether anything was read off a table of the kit in play */
export function createLawNews(
  desk: Pick<DeskModel, 'law' | 'setLaw'>,
  hasReadings: ReadonlySignal<boolean>,
): LawNews {
  return {
    since: computed(() => {
      const law = desk.law.value;
      return law < MODEL_VERSION ? { law, hasReadings: hasReadings.value } : null;
    }),
    seen: () => desk.setLaw(MODEL_VERSION),
  };
}
