import { SHELF_LABELS, SHELVES } from './kit/shelf-labels';
import type { Place, Route } from './route';
import { INPUT_LABELS } from './shot/tile-words';

const PLACES: Readonly<Record<Place, string>> = {
  shot: 'Shot',
  choose: 'Choose',
  kit: 'Kit',
  log: 'Log',
};

/** By the first word of a panel's address; one that is not here goes by its place alone. */
const PANELS: ReadonlyMap<string, string> = new Map([
  ...Object.entries(INPUT_LABELS),
  ['why', 'Why this aim'],
  ['coach', 'Coach’s view'],
  ['question', 'One question'],
  ['play', 'Play'],
  ['zone', 'Zone'],
  ['ways', 'Ways'],
  ['positions', 'Positions'],
  ...SHELVES.map((shelf) => [shelf, SHELF_LABELS[shelf]] as const),
  ['measure', 'Measure'],
  ['players', 'Players'],
  ['preferences', 'Units and layout'],
  ['backup', 'Backup'],
  ['about', 'About'],
  ['card', 'Card'],
  ['drill', 'Drill card'],
  ['link', 'Links'],
  ['share', 'Share'],
  ['words', 'Words and lines'],
  ['after', 'How did it go?'],
  ['shots', 'A shot'],
  ['test', 'Level test'],
  ['practice', 'Practice'],
]);

/** What the window is called, the nearest first: "Backup, Kit, Leeway". */
export function placeTitle({ place, panel }: Route): string {
  const open = PANELS.get(panel.split('/')[0] ?? '');
  return [open, PLACES[place], 'Leeway'].filter((part) => part !== undefined).join(', ');
}
