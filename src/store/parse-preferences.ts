import { DEFAULT_PREFERENCES } from './default-desk';
import { type Mend, mendObject, mendWord } from './mend';
import type { Preferences } from './records';

/** Mends preferences: a word this version does not know gives way to the default. */
export const mendPreferences: Mend<Preferences> = mendObject<Preferences>({
  lengthUnit: mendWord(['mm', 'cm', 'in'], DEFAULT_PREFERENCES.lengthUnit),
  distanceUnit: mendWord(
    ['m', 'cm', 'in', 'diamonds', 'table-lengths'],
    DEFAULT_PREFERENCES.distanceUnit,
  ),
  distanceFrom: mendWord(['ghost-ball', 'ball-to-ball'], DEFAULT_PREFERENCES.distanceFrom),
  speedUnit: mendWord(['mps', 'kmh', 'mph', 'lengths'], DEFAULT_PREFERENCES.speedUnit),
  cutUnit: mendWord(['degrees', 'ball-hit'], DEFAULT_PREFERENCES.cutUnit),
  lead: mendWord(['object-ball', 'ghost-ball'], DEFAULT_PREFERENCES.lead),
  hand: mendWord(['right', 'left'], DEFAULT_PREFERENCES.hand),
  theme: mendWord(['dark', 'light', 'system'], DEFAULT_PREFERENCES.theme),
});
