import { corruptRow, type LyingRow } from '../harness/corrupt-rows';
import { pick } from '../harness/damage-text';
import type { Random } from '../harness/seeded-random';
import { CONTENTS } from './backup/invented-contents';

const { shelves, attempts, positions, desk, setAside } = CONTENTS;

/** What a player may have, row by row. */
const ROWS: readonly LyingRow[] = [
  ...(['cues', 'cloths', 'balls', 'tables'] as const).flatMap((store) =>
    shelves[store].map((row) => ({ store, row })),
  ),
  ...attempts.map((row) => ({ store: 'attempts' as const, row })),
  ...positions.map((row) => ({ store: 'positions' as const, row })),
  { store: 'desk', row: desk },
  ...setAside.map((row) => ({ store: 'set-aside' as const, row })),
  {
    store: 'former-contents',
    row: {
      reason: 'upgrade',
      id: 'b',
      atMs: 5,
      schema: 2,
      rows: { cues: shelves.cues.map((value) => ({ key: value.id, value })), attempts: 'torn' },
    },
  },
];

/** The same with a quarter of them gone bad, each store's among them sooner or later. */
export function lyingRows(random: Random): readonly LyingRow[] {
  const sure = pick(random, ROWS);
  return ROWS.map((row) => (row === sure || random() < 0.25 ? corruptRow(row, random) : row));
}
