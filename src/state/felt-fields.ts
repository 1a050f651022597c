import type { ShelfName, Shelves } from '../store/records';
import { type FeltName, FIRM_MPS, MEDIUM_MPS, SOFT_MPS } from '../units/felt-figures';
import { formatQuantity } from '../units/format-number';
import { speedScale } from '../units/speed-unit';
import { TABLE_RUNS } from '../units/table-run';
import { FELT_WORDS } from '../words/felt-words';
import { FELT_PATHS, type FeltNumber, feltAt, feltRange, withFelt } from './felt-number';
import { feltSetting } from './felt-setting';
import { clean, type FigureField, type FigureSetting } from './figure-field';

/** What a player can see of each kind, the telling one first. */
export const FELT_ON: { readonly [S in ShelfName]: readonly FeltName[] } = {
  cues: ['squirt', 'pivot'],
  cloths: ['run', 'draw'],
  balls: ['throw'],
  tables: ['rebound'],
};

/** The figures of a shelf's records that a player can see, which write the engine's numbers. */
export function feltFields<S extends ShelfName>(
  shelf: S,
  setting: FigureSetting,
): readonly FigureField<S>[] {
  return FELT_ON[shelf].map((name) => feltField(shelf, name, setting));
}

/** As many as the numbers behind a figure are solved to. */
const SOLVED_DIGITS = 9;

function feltField<S extends ShelfName>(
  shelf: S,
  name: FeltName,
  { inPlay, units }: FigureSetting,
): FigureField<S> {
  const settingOf = (record: Shelves[S]) => feltSetting(inPlay, shelf, record);
  const felt: FeltNumber<S> = { name, shelf, settingOf };
  const { label, hint, shownIn } = FELT_WORDS[name];
  const { facts, shownPerSi } = shownIn(units, inPlay.tables.lengthM);
  return {
    path: `felt.${name}`,
    label,
    hint: hint(speedWriter({ inPlay, units })),
    facts,
    kind: 'felt',
    writes: FELT_PATHS[name],
    read: (record) => clean(feltAt(felt, record) * shownPerSi, SOLVED_DIGITS),
    rangeOf(record) {
      const { min, max } = feltRange(felt, record);
      return { min: clean(min * shownPerSi), max: clean(max * shownPerSi) };
    },
    write: (record, figure) => withFelt(felt, record, figure / shownPerSi),
  };
}

const SPEEDS = { soft: SOFT_MPS, medium: MEDIUM_MPS, firm: FIRM_MPS };

/** Speeds as the person likes them told. */
function speedWriter({ inPlay, units }: FigureSetting) {
  const { kit, tableLengthM } = feltSetting(inPlay, 'tables', inPlay.tables);
  const { facts, inUnit } = speedScale(units.speedUnit, { kit, tableLengthM }, TABLE_RUNS);
  return (word: keyof typeof SPEEDS) => formatQuantity(inUnit(SPEEDS[word]), facts);
}
