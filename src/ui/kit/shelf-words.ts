import {
  ballsSketch,
  clothSketch,
  cueSketch,
  type Sketch,
  tableSketch,
} from '../../diagram/kit-sketch';
import { type ToldBy, tellingsOf, toldBy } from '../../state/kit-telling';
import type { Named, ShelfName, Shelves } from '../../store/records';
import { formatQuantity } from '../../units/format-number';
import { BED_SIZE, type KitUnits } from '../../units/kit-units';
import type { LaterModels } from '../app-models';

/** Where a record's numbers come from. */
export function originWords({ origin }: Pick<Named, 'origin'>): string {
  return origin === 'invented' ? 'an invented example' : 'yours, by hand';
}

/** What a record is told by in a list. */
export interface SeenRecord {
  readonly sketch: Sketch;
  /** "42 mm" and "squirt". */
  readonly figure: string;
  readonly caption: string;
  /** Another, where one does not tell all. */
  readonly also?: string;
  /** Where the figure comes from. */
  readonly source: string;
}

type SeenModels = LaterModels<'kit' | 'measure' | 'desk'>;

/** A record as a player can see it: a drawing and one telling figure. */
export function seenRecord<S extends ShelfName>(
  app: SeenModels,
  shelf: S,
  record: Shelves[S],
): SeenRecord {
  const told = tellingsOf(app, shelf, record);
  const source = SOURCES[toldBy(app, shelf, record)] ?? originWords(record);
  return { ...SEEN[shelf](told, app, record as Shelves[S] & Shelves['tables']), source };
}

/** The invented figure does not stand as if nothing had been measured. */
const SOURCES: { readonly [B in ToldBy]?: string } = {
  readings: 'measured',
  unread: 'before readings, which count in play',
};

type Tellings = ReturnType<typeof tellingsOf>;
type Seen = Omit<SeenRecord, 'source'>;

const SEEN: Readonly<
  Record<ShelfName, (told: Tellings, app: SeenModels, record: Shelves['tables']) => Seen>
> = {
  cues: ({ squirt }, { kit }) => ({
    sketch: cueSketch((squirt?.value ?? 0) / kit.current.tables.value.lengthM),
    figure: squirt?.figure ?? '',
    caption: squirt?.short ?? '',
  }),
  cloths: ({ run }, { kit }) => ({
    sketch: clothSketch((run?.value ?? 0) / kit.current.tables.value.lengthM),
    figure: run?.figure ?? '',
    caption: run?.short ?? '',
  }),
  balls: ({ throw: thrown }) => ({
    sketch: ballsSketch(thrown?.value ?? 0),
    figure: thrown?.figure ?? '',
    caption: thrown?.short ?? '',
  }),
  tables: ({ rebound }, { desk }, { lengthM, widthM }) => ({
    sketch: tableSketch(lengthM, widthM, rebound?.value ?? 0),
    figure: bedLength(lengthM, desk.preferences.value),
    caption: 'long',
    also: `${Math.round(100 * (rebound?.value ?? 0))} % ${rebound?.short ?? ''}`,
  }),
};

function bedLength(lengthM: number, units: KitUnits): string {
  const { facts, shownPerSi } = BED_SIZE(units);
  return formatQuantity(lengthM * shownPerSi, { ...facts, decimals: Math.min(2, facts.decimals) });
}
