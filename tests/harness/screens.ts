import { LINK_OF_VERSION_1 } from '../fixtures/link-of-version-1';

/** Every place and panel of the app, by what follows its address. */
export const SCREENS = [
  'shot',
  'shot/distance',
  'shot/cut',
  'shot/pocket',
  'shot/speed',
  'shot/tip',
  'shot/raised',
  'shot/why',
  'shot/coach',
  'shot/question',
  'shot/after',
  'choose',
  'choose/play',
  'choose/zone',
  'choose/ways',
  'choose/positions',
  'kit',
  'kit/cues',
  'kit/cues/demo-cue-house',
  'kit/cloths/demo-cloth-club',
  'kit/balls/demo-balls-clean',
  'kit/tables/demo-table-9ft',
  'kit/players',
  'kit/measure',
  'kit/backup',
  'kit/card',
  'kit/drill/demo-position-2',
  'kit/drill/speed',
  'kit/link',
  `kit/link/${LINK_OF_VERSION_1}`,
  'kit/share/shot',
  'kit/share/kit',
  'kit/preferences',
  'kit/about',
  'kit/words',
  'log',
  'log/test',
  'log/test/new',
  'log/practice',
  'log/practice/line',
  'log/practice/speed',
] as const;

/** Small and large phones, one of them lying down, and a tablet; CSS pixels. */
export const SIZES = [
  { width: 320, height: 640 },
  { width: 360, height: 640 },
  { width: 390, height: 844 },
  { width: 844, height: 390 },
  { width: 768, height: 1024 },
] as const;

export const THEMES = ['dark', 'light'] as const;
