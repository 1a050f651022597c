import { describe, expect, it } from 'vitest';
import { createKeptRows } from '../../../src/state/kept-rows';
import { createMemoryStore } from '../../../src/store/memory-store';
import { createNoticeBoard } from '../../../src/store/notice-board';
import type { SavedPosition } from '../../../src/store/saved-position';
import type { StorePort } from '../../../src/store/store-port';
import type { Elsewhere } from '../../../src/store/tabs/elsewhere';
import { CUT, OTHER } from './choose/open-choose';

/** Two positions, and what another tab does to them. */
function openRows(change: Partial<StorePort> = {}) {
  let tell = (_news: Elsewhere) => {};
  const store = {
    ...createMemoryStore(createNoticeBoard()),
    onElsewhere(listener: (news: Elsewhere) => void) {
      tell = listener;
      return () => {};
    },
    ...change,
  };
  const rows = createKeptRows({ store, list: 'positions' }, [CUT, OTHER]);
  const elsewhere = (was: SavedPosition, row: SavedPosition | null) =>
    tell({ kind: 'row', store: 'positions', id: was.id, was, row });
  return { rows, elsewhere, ids: () => rows.all.value.map(({ id }) => id) };
}

describe('a row that was removed', () => {
  it('is put back as it was', () => {
    const { rows, ids } = openRows();
    expect(rows.putBack()).toBeNull();
    rows.remove('cut');
    expect(rows.removed.value).toEqual(CUT);
    expect(ids()).toEqual(['other']);
    expect(rows.putBack()).toEqual(CUT);
    expect(ids()).toEqual(['cut', 'other']);
    expect(rows.removed.value).toBeNull();
  });

  it('is not put back over what another tab made of it', () => {
    const { rows, elsewhere } = openRows();
    rows.remove('cut');
    const changed = { ...CUT, name: 'Changed elsewhere' };
    elsewhere(CUT, changed);
    expect(rows.find('cut')).toEqual(changed);
    expect(rows.putBack()).toBeNull();
    expect(rows.find('cut')).toEqual(changed);
  });

  it('and that the store keeps is there again, with nothing to put back', async () => {
    const { rows, ids } = openRows({
      delete: async () => ({ ok: false, reason: 'last-on-shelf' }),
    });
    rows.remove('cut');
    await rows.flush();
    expect(ids()).toEqual(['cut', 'other']);
    expect(rows.removed.value).toBeNull();
  });
});

describe('a row that another tab deleted', () => {
  it('is off the list, and found by whoever has it in hand until it is there again', () => {
    const { rows, elsewhere, ids } = openRows();
    elsewhere(CUT, null);
    expect(ids()).toEqual(['other']);
    expect(rows.find('cut')).toEqual(CUT);
    rows.put({ ...CUT, name: 'Kept after all' });
    expect(ids()).toEqual(['cut', 'other']);
    expect(rows.find('cut')?.name).toBe('Kept after all');
  });
});
