import { describe, expect, it } from 'vitest';
import { parseBackup } from '../../../../src/store/backup/parse-backup';
import { CONTENTS, MY_CUE } from '../../../store/backup/invented-contents';
import { downloads, openBackup, picked, sheet } from './open-backup';

const NAME = 'leeway-backup-2026-01-05.json';

describe('saving a backup', () => {
  it('hands out one file, named by the day, from which all comes back', async () => {
    const { port, shared } = downloads();
    const { model } = await openBackup({ sharing: port });
    await model.out.save();
    expect(model.out.outcome.value).toEqual({ kind: 'downloaded', name: NAME });
    const [file] = shared;
    expect([file?.name, file?.type]).toEqual([NAME, 'application/json']);
    const parsed = await parseBackup((await file?.text()) ?? '', null);
    expect(parsed.ok && parsed.backup.contents).toEqual(CONTENTS);
  });

  it('saves what is pending before it looks', async () => {
    const { model, done } = await openBackup();
    const stop = model.out.keepReady();
    expect(done).toEqual(['flush']);
    stop();
    await model.out.save();
    expect(done).toEqual(['flush', 'flush']);
  });

  it('is not ready before that is saved', async () => {
    let saved = () => {};
    const flush = () =>
      new Promise<void>((resolve) => {
        saved = resolve;
      });
    const { model, gate } = await openBackup({ flush });
    model.out.keepReady();
    await gate.store.put('cues', { ...MY_CUE, id: 'another' });
    await new Promise((resolve) => setTimeout(resolve, 0));
    expect(model.out.counts.value).toBeNull();
    saved();
    await expect.poll(() => model.out.counts.value?.cues).toBe(6);
  });

  it('says what is in the file', async () => {
    const { model } = await openBackup();
    const stop = model.out.keepReady();
    await expect.poll(() => model.out.counts.value).toMatchObject({ cues: 5, attempts: 2 });
    expect(model.out.counts.value).toMatchObject({ cloths: 3, desk: 1, 'set-aside': 2 });
    stop();
    expect(model.out.counts.value).toBeNull();
  });

  it('waits for nothing between the tap and the sheet once a file is ready', async () => {
    const { port } = sheet();
    let opened = 0;
    const share = async () => {
      opened += 1;
    };
    const { model } = await openBackup({ sharing: { ...port, share } });
    model.out.keepReady();
    await expect.poll(() => model.out.counts.value).not.toBeNull();
    void model.out.save();
    expect(opened).toBe(1);
  });

  it('makes the file anew when something is saved meanwhile', async () => {
    const { port, shared } = downloads();
    const { model, gate } = await openBackup({ sharing: port });
    model.out.keepReady();
    await expect.poll(() => model.out.counts.value?.cues).toBe(5);
    await gate.store.put('cues', { ...MY_CUE, id: 'another' });
    await expect.poll(() => model.out.counts.value?.cues).toBe(6);
    await model.out.save();
    expect(await shared[0]?.text()).toContain('"id":"another"');
  });

  it('makes it anew when told that another tab may have written', async () => {
    const { model, store } = await openBackup();
    model.out.keepReady();
    await expect.poll(() => model.out.counts.value?.cues).toBe(5);
    await store.put('cues', { ...MY_CUE, id: 'another' });
    await model.out.refresh();
    expect(model.out.counts.value?.cues).toBe(6);
  });

  it('tells a sheet that was closed from one that took it', async () => {
    const { port, shared } = sheet('AbortError');
    const { model } = await openBackup({ sharing: port });
    await model.out.save();
    expect(model.out.outcome.value).toEqual({ kind: 'cancelled' });
    expect(shared).toEqual([]);
    await model.out.save();
    expect(model.out.outcome.value).toEqual({ kind: 'shared', name: NAME });
  });

  it('goes on at the next way where a sheet refuses', async () => {
    const { port, shared } = sheet('NotAllowedError', 'NotAllowedError');
    const { model } = await openBackup({ sharing: port });
    await model.out.save();
    expect(model.out.outcome.value).toMatchObject({ kind: 'again' });
    await model.out.save();
    await model.out.save();
    expect(model.out.outcome.value).toEqual({ kind: 'downloaded', name: NAME });
    expect(shared).toHaveLength(1);
  });

  it('says why where what is kept cannot be read, and tries again the next time', async () => {
    const reason = 'not-read';
    const { model } = await openBackup({ over: { readAll: async () => ({ ok: false, reason }) } });
    await model.out.save();
    expect(model.out.outcome.value).toEqual({ kind: 'failed', reason });
    expect(model.out.counts.value).toBeNull();
  });
});

it('comes back in by its own door', async () => {
  const { port, shared } = downloads();
  const { model } = await openBackup({ sharing: port });
  await model.out.save();
  await model.into.pick(picked((await shared[0]?.text()) ?? ''));
  expect(model.into.incoming.value.kind).toBe('planned');
});
