import { LIST_NAMES } from '../../src/store/stores';
import { corruptRow, type LyingRow } from '../harness/corrupt-rows';
import { pick } from '../harness/damage-text';
import type { Random } from '../harness/seeded-random';
import { CONTENTS } from './backup/invented-contents';

const { desk, setAside } = CONTENTS;

/** What a player may have, row by row. */
const ROWS: readonly LyingRow[] = [
  ...LIST_NAMES.flatMap((store) => CONTENTS[store].map((row) => ({ store, row }))),
  { store: 'desk', row: desk },
  ...setAside.map((row) => ({ store: 'set-aside' as const, row })),
  {
    store: 'former-contents',
    row: {
      reason: 'upgrade',
      id: 'b',
      atMs: 5,
      schema: 2,
      rows: { cues: CONTENTS.cues.map((value) => ({ key: value.id, value })), attempts: 'torn' },
    },
  },
];

/** The same with a quarter of them gone bad, each store's among them sooner or later. */
export function lyingRows(random: Random): readonly LyingRow[] {
  const sure = pick(random, ROWS);
  return ROWS.map((row) => (row === sure || random() < 0.25 ? corruptRow(row, random) : row));
}
