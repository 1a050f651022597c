import type { ShelfName, Shelves } from '../store/records';
import { FELT_FIGURES, type FeltName } from '../units/felt-figures';
import { formatQuantity } from '../units/format-number';
import { FELT_WORDS } from '../words/felt-words';
import type { DeskModel } from './desk-model';
import { FELT_ON } from './felt-fields';
import { feltSetting } from './felt-setting';
import type { KitModel } from './kit-model';
import type { MeasureModel } from './measure/measure-model';

/** One figure of a record that a player can see. */
export interface Telling {
  /** SI. */
  readonly value: number;
  /** With its unit, as it is shown. */
  readonly figure: string;
  /** What it is of, in a word or two. */
  readonly short: string;
}

interface TellingModels {
  readonly kit: KitModel;
  readonly measure: Pick<MeasureModel, 'knowledge' | 'measured'>;
  readonly desk: Pick<DeskModel, 'preferences'>;
}

/** Whether what is told of a record comes from readings: of the one in play it may. */
export function isMeasured(
  { kit, measure }: Pick<TellingModels, 'kit' | 'measure'>,
  shelf: ShelfName,
  id: string,
): boolean {
  return kit.current[shelf].value.id === id && measure.measured.value.includes(shelf);
}

/** What a player can see of a record, the telling one first: as measured where it was, else by its numbers. */
export function tellingsOf<S extends ShelfName>(
  { kit, measure, desk }: TellingModels,
  shelf: S,
  record: Shelves[S],
): { readonly [N in FeltName]?: Telling } {
  const inPlay = kit.inPlay.value;
  const own = feltSetting(inPlay, shelf, record);
  const setting = isMeasured({ kit, measure }, shelf, record.id)
    ? { ...own, kit: measure.knowledge.value.kit }
    : own;
  const told = FELT_ON[shelf].map((name) => {
    const value = FELT_FIGURES[name](setting);
    const { short, shownIn } = FELT_WORDS[name];
    const { facts, shownPerSi } = shownIn(desk.preferences.value, inPlay.tables.lengthM);
    return [name, { value, figure: formatQuantity(value * shownPerSi, facts), short }] as const;
  });
  return Object.fromEntries(told);
}
