import { expect, it } from 'vitest';
import { createUndoneMark } from '../../../../src/state/backup/undone-mark';
import { contentsOf, textOf } from '../../../store/backup/import-text';
import { CONTENTS } from '../../../store/backup/invented-contents';
import { newDraftStorage } from '../../../store/new-device';
import { openBackup, picked } from './open-backup';

const EMPTIED = { ...CONTENTS, attempts: [], setAside: [] };

/** A device into which a backup was brought. */
async function broughtIn() {
  const opened = await openBackup({ contents: EMPTIED });
  await opened.model.into.pick(picked(await textOf((await openBackup()).store)));
  opened.model.into.setMode('replace');
  await opened.model.into.bringIn();
  opened.done.length = 0;
  opened.gate.open();
  return opened;
}

it('puts back what was there before, and tells that from an import', async () => {
  const { model, store, done } = await broughtIn();
  const { undoing } = model;
  await undoing.look();
  expect(undoing.last.value).toEqual({ atMs: await store.lastImportMs(), wasUndoing: false });
  await undoing.undo();
  expect(done).toEqual(['flush', 'reload']);
  expect(await contentsOf(store)).toEqual(EMPTIED);
  await undoing.look();
  expect(undoing.last.value).toEqual({ atMs: await store.lastImportMs(), wasUndoing: true });
});

it('can be undone itself, and then is an import again', async () => {
  const { model, store, gate } = await broughtIn();
  const { undoing } = model;
  await undoing.look();
  await undoing.undo();
  await undoing.look();
  gate.open();
  await undoing.undo();
  expect(await contentsOf(store)).toEqual(CONTENTS);
  await undoing.look();
  expect(undoing.last.value?.wasUndoing).toBe(false);
});

it('says so where there is nothing to undo, and loads nothing anew', async () => {
  const { model, done } = await openBackup({
    over: {
      lastImportMs: async () => null,
      undoImport: async () => ({ ok: false, reason: 'nothing-kept' }),
    },
  });
  await model.undoing.look();
  expect(model.undoing.last.value).toBeNull();
  await model.undoing.undo();
  expect(model.undoing.problem.value).toBe('nothing-kept');
  expect(done).toEqual(['flush']);
});

it('remembers an undoing over a reload, as far as the browser lets it', () => {
  const storage = newDraftStorage();
  createUndoneMark(() => storage).write(1_790_000_000_000);
  const mark = createUndoneMark(() => storage);
  expect(mark.read()).toBe(1_790_000_000_000);
  mark.write(null);
  expect(mark.read()).toBeNull();
  storage.setItem('leeway.undone-import', 'scribble');
  expect(mark.read()).toBeNull();
  const forbidden = createUndoneMark(() => {
    throw new DOMException('', 'SecurityError');
  });
  forbidden.write(5);
  expect(forbidden.read()).toBeNull();
});
