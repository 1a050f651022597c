import { signal } from '@preact/signals';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { MOST_SHOTS } from '../../../src/engine/fit/fit-question';
import { mendedFields } from '../../../src/state/backup/mended-field';
import { withinRoom } from '../../../src/state/backup/within-room';
import { createKeptPositions } from '../../../src/state/choose/kept-positions';
import { createPositionEdits } from '../../../src/state/choose/position-edits';
import type { Contents, Repair } from '../../../src/store/contents';
import { DEMO_CATALOGUE } from '../../../src/store/demo-catalogue';
import { createMemoryStore } from '../../../src/store/memory-store';
import { MOST_OF_A_KIND } from '../../../src/store/most-of-a-kind';
import { createNoticeBoard } from '../../../src/store/notice-board';
import type { Table } from '../../../src/store/records';
import { countingIds } from '../../harness/count-reads';
import { contentsOf, fill, textOf } from '../../store/backup/import-text';
import { manyContents } from '../../store/backup/many-contents';
import { openBackup, picked } from './backup/open-backup';
import { openChoose } from './choose/open-choose';
import { openMeasure } from './measure/open-measure';

const MANY = 300;
/** So often the id of a row may be read for one thing done; what looks through all for each reads it {@link MANY} times. */
const FEW = 40;

afterEach(() => {
  vi.restoreAllMocks();
});

async function storeOf(contents: Contents) {
  const store = createMemoryStore(createNoticeBoard());
  await fill(store, contents);
  return store;
}

describe('many rows', () => {
  it('of trials find the records they were played with without looking through all', async () => {
    const contents = manyContents(MANY);
    const { rows: cues, reads } = countingIds(contents.cues);
    const kept = await storeOf({ ...contents, cues });
    const { measure } = await openMeasure({ kept });
    reads();
    expect(measure.attempts.value).toHaveLength(MANY);
    expect(reads()).toBeLessThan(FEW * MANY);
  });

  it('of positions are put in order without looking for the place of each', async () => {
    const { positions } = manyContents(MANY);
    const { model } = await openChoose({ positions });
    let walks = 0;
    const { indexOf } = Array.prototype;
    vi.spyOn(Array.prototype, 'indexOf').mockImplementation(function (this: unknown[], ...given) {
      if (this.length >= MANY) walks += 1;
      return indexOf.apply(this, given);
    });
    model.openPosition(`position-${MANY - 1}`);
    vi.restoreAllMocks();
    expect(model.saved.value[0]?.id).toBe(`position-${MANY - 1}`);
    expect(walks).toBeLessThan(5);
  });

  it('that had to be mended are found by their ids at once', () => {
    const contents = manyContents(MANY);
    const { rows, reads } = countingIds(contents.cues);
    const repairs = contents.cues.map(
      ({ id }): Repair => ({ store: 'cues', id, field: 'massRatio', was: 1e9, now: 200 }),
    );
    const mended = mendedFields(repairs, { ...contents, cues: rows });
    expect(mended.map(({ name }) => name)).toEqual(contents.cues.map(({ name }) => name));
    expect(reads()).toBeLessThan(FEW * MANY);
  });

  it('are not written out for the second copy once its room is full', () => {
    const contents = manyContents(0, MANY, 0);
    const { rows: attempts, reads } = countingIds(contents.attempts);
    const { leftOut } = withinRoom({ ...contents, attempts }, 20_000);
    expect(leftOut).toBeGreaterThan(MANY - 50);
    expect(reads()).toBeLessThan(2 * FEW);
  });

  it('are fitted as far as that is done in half a minute, the newest', async () => {
    const first = await openMeasure();
    first.shootLine();
    await first.measure.flush();
    const [shot] = (await contentsOf(first.memory)).attempts;
    if (!shot) throw new Error('nothing was shot');
    const numbered = Array.from({ length: MOST_SHOTS + 20 }, (_, at) => ({
      ...shot,
      id: `shot-${at}`,
      startedAtMs: shot.startedAtMs + at,
    }));
    const kept = await storeOf({ ...manyContents(0), attempts: numbered });
    const opened = await openMeasure({ kept });
    await opened.rest();
    const fitted = opened.lastJob().shots.map(({ id }) => id);
    expect(fitted).toEqual(numbered.slice(20).map(({ id }) => id));
  });
});

describe('as many of a kind as are kept', () => {
  it('are all the shots of trials there can be', async () => {
    const kept = await storeOf(manyContents(0, MOST_OF_A_KIND, 0));
    const { measure } = await openMeasure({ kept });
    expect(measure.crowded.value).toMatch(/5,000 of a kind at most.*Delete some/);
    measure.remove('attempt-7');
    expect(measure.crowded.value).toBeNull();
  });

  it('are all the cues there can be', async () => {
    const kept = await storeOf(manyContents(MOST_OF_A_KIND, 0, 0));
    const { kit } = await openMeasure({ kept });
    const refused = { ok: false, problem: expect.stringContaining('5,000 of a kind at most') };
    expect(kit.copy('cues', 'demo-cue-house')).toMatchObject(refused);
    expect(kit.copy('cloths', 'demo-cloth-club').ok).toBe(true);
  });

  it('are all the positions there can be', () => {
    const { positions } = manyContents(0, 0, MOST_OF_A_KIND);
    const table = DEMO_CATALOGUE.tables[0] as Table;
    const clock = { now: () => 0, newId: () => 'new' };
    const store = createMemoryStore(createNoticeBoard());
    const kept = createKeptPositions({ store, positions, table: signal(table), ...clock });
    const edits = createPositionEdits({ kept, ...clock });
    expect(edits.duplicate('position-1')).toMatchObject({ ok: false });
    edits.remove('position-2');
    expect(edits.duplicate('position-1')).toEqual({ ok: true });
  });

  it('are not gone beyond by a backup: the plan says so and is not carried out', async () => {
    const few = await openBackup({ contents: manyContents(0, 2, 0) });
    const { model, store, done } = await openBackup({
      contents: {
        ...manyContents(0, MOST_OF_A_KIND - 1, 0),
        attempts: manyContents(0, MOST_OF_A_KIND + 1, 0).attempts.slice(2),
      },
    });
    await model.into.pick(picked(await textOf(few.store)));
    expect(model.into.incoming.value).toMatchObject({
      kind: 'planned',
      canBeDone: false,
      problem: 'too-many',
    });
    await model.into.bringIn();
    expect(done).not.toContain('reload');
    expect((await contentsOf(store)).attempts).toHaveLength(MOST_OF_A_KIND - 1);
    model.into.setMode('replace');
    expect(model.into.incoming.value).toMatchObject({ canBeDone: true, problem: null });
  });
});
