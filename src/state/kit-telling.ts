import type { Kit } from '../engine/kit/kit';
import { numberIn, PLACED_NUMBERS } from '../engine/kit/kit-numbers';
import { PART_OF } from '../store/kit-fields';
import { withNumberAt } from '../store/number-at';
import type { ShelfName, Shelves } from '../store/records';
import { FELT_FIGURES, type FeltName } from '../units/felt-figures';
import { formatQuantity } from '../units/format-number';
import { FELT_WORDS } from '../words/felt-words';
import type { DeskModel } from './desk-model';
import { FELT_ON } from './felt-fields';
import { feltSetting } from './felt-setting';
import type { KitModel } from './kit-model';
import { kitAsMeasured } from './measure/kit-as-measured';
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
  readonly measure: Pick<MeasureModel, 'knowledge' | 'measured' | 'report' | 'shotsReadOn'>;
  readonly desk: Pick<DeskModel, 'preferences'>;
}

/**
 * What a record is told by: readings, or its own numbers. `unread`: its own, although readings tell
 * more of it: while it is out of play those may be unknown.
 */
export type ToldBy = 'readings' | 'unread' | 'numbers';

/** By what a record is told, and the kit that holds it. */
function toldOf<S extends ShelfName>(
  { kit, measure }: Pick<TellingModels, 'kit' | 'measure'>,
  shelf: S,
  record: Shelves[S],
  own: Kit,
): { readonly by: ToldBy; readonly kit: Kit } {
  if (kit.current[shelf].value.id === record.id) {
    const isMeasured = measure.measured.value.includes(shelf);
    return isMeasured
      ? { by: 'readings', kit: measure.knowledge.value.kit }
      : { by: 'numbers', kit: own };
  }
  if (measure.shotsReadOn(shelf, record) === 0) return { by: 'numbers', kit: own };
  const measured = kitAsMeasured(own, shelf, record, measure.report.value);
  return measured ? { by: 'readings', kit: measured } : { by: 'unread', kit: own };
}

/** By what {@link tellingsOf} tells a record. */
export function toldBy<S extends ShelfName>(
  models: Pick<TellingModels, 'kit' | 'measure'>,
  shelf: S,
  record: Shelves[S],
): ToldBy {
  const own = feltSetting(models.kit.inPlay.value, shelf, record);
  return toldOf(models, shelf, record, own.kit).by;
}

/** A record with the numbers that it is told by: those that readings gave it, where it was measured. */
export function recordAsTold<S extends ShelfName>(
  models: Pick<TellingModels, 'kit' | 'measure'>,
  shelf: S,
  record: Shelves[S],
): Shelves[S] {
  const own = feltSetting(models.kit.inPlay.value, shelf, record);
  const told = toldOf(models, shelf, record, own.kit);
  if (told.by !== 'readings') return record;
  return PLACED_NUMBERS.filter(({ part }) => part === PART_OF[shelf]).reduce<Shelves[S]>(
    (made, number) => withNumberAt(made, number.path, numberIn(told.kit, number)),
    { ...record, origin: 'by-hand' },
  );
}

/** What a player can see of a record, the telling one first: as measured where it was, else by its numbers. */
export function tellingsOf<S extends ShelfName>(
  models: TellingModels,
  shelf: S,
  record: Shelves[S],
): { readonly [N in FeltName]?: Telling } {
  const inPlay = models.kit.inPlay.value;
  const own = feltSetting(inPlay, shelf, record);
  const setting = { ...own, kit: toldOf(models, shelf, record, own.kit).kit };
  const told = FELT_ON[shelf].map((name) => {
    const value = FELT_FIGURES[name](setting);
    const { short, shownIn } = FELT_WORDS[name];
    const { facts, shownPerSi } = shownIn(models.desk.preferences.value, inPlay.tables.lengthM);
    return [name, { value, figure: formatQuantity(value * shownPerSi, facts), short }] as const;
  });
  return Object.fromEntries(told);
}
