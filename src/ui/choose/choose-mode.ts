/** What the table is being used for; `positions` lists those kept. */
export type ChooseMode = 'balls' | 'play' | 'zone' | 'ways' | 'positions';

/** Those between which one goes to and fro over the same table. */
export const TABLE_MODES: readonly (readonly [ChooseMode, string])[] = [
  ['balls', 'Balls'],
  ['play', 'Play'],
  ['zone', 'Zone'],
  ['ways', 'Ways'],
];

const MODES: readonly ChooseMode[] = ['balls', 'play', 'zone', 'ways', 'positions'];

/** The mode a panel's name opens, or one within it; no panel is Balls. */
export function modeOf(panel: string): ChooseMode {
  const [head] = panel.split('/');
  return MODES.find((mode) => mode === head) ?? 'balls';
}
