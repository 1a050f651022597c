import { signal } from '@preact/signals';
import { DEFAULT_DESK } from '../../../src/store/default-desk';
import type { StrayApp } from '../../../src/ui/player/learnt-words';
import type { LengthUnit } from '../../../src/units/unit-names';

/** A nine-foot table of 2.54 m, read in a unit: as much of the app as tells how far a line is off. */
export function readIn(lengthUnit: LengthUnit): StrayApp {
  const preferences = signal({ ...DEFAULT_DESK.preferences, lengthUnit });
  const current = { tables: signal({ lengthM: 2.54 }) };
  return { kit: { current }, desk: { preferences } } as unknown as StrayApp;
}
