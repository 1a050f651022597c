import { describe, expect, it } from 'vitest';
import type { Contents } from '../../../../src/store/contents';
import { DEFAULT_DESK } from '../../../../src/store/default-desk';
import { DEMO_CATALOGUE } from '../../../../src/store/demo-catalogue';
import { contentsOf, textOf } from '../../../store/backup/import-text';
import { CONTENTS, MY_CUE } from '../../../store/backup/invented-contents';
import { resealed } from '../../../store/backup/resealed';
import { openBackup, picked } from './open-backup';

/** A device on which nothing has been entered but one other cue. */
const HERS = { ...MY_CUE, id: 'hers', name: 'Her cue' };
const OTHER: Contents = {
  ...CONTENTS,
  desk: DEFAULT_DESK,
  ...DEMO_CATALOGUE,
  cues: [...DEMO_CATALOGUE.cues, HERS],
  attempts: [],
  setAside: [],
};

const backupText = async () => textOf((await openBackup()).store);
const namesOf = async (opened: Awaited<ReturnType<typeof openBackup>>) =>
  (await contentsOf(opened.store)).cues.map(({ name }) => name);

describe('picking a file', () => {
  it('says what a merge would do, and does nothing yet', async () => {
    const opened = await openBackup({ contents: OTHER });
    const before = await contentsOf(opened.store);
    await opened.model.into.pick(picked(await backupText()));
    expect(opened.model.into.incoming.value).toMatchObject({
      kind: 'planned',
      fileName: 'invented.json',
      mended: [],
      problem: null,
      plan: { mode: 'merge', changes: { cues: { added: [MY_CUE.name], removed: [] } } },
    });
    expect(await contentsOf(opened.store)).toEqual(before);
    expect(opened.done).not.toContain('reload');
  });

  it('takes the place of what is here, unasked, where nothing of the person’s is', async () => {
    const nothing = { cues: DEMO_CATALOGUE.cues, positions: [], players: [], played: [] };
    const { model } = await openBackup({ contents: { ...OTHER, ...nothing } });
    await model.into.pick(picked(await backupText()));
    expect(model.into.incoming.value).toMatchObject({
      isBlankHere: true,
      plan: { mode: 'replace', changes: { cues: { added: [MY_CUE.name] } } },
    });
  });

  it('asks where no more than one position is the person’s own', async () => {
    const [own] = CONTENTS.positions.filter(({ origin }) => origin !== 'invented');
    if (!own) throw new Error('no position of one’s own');
    const one = { cues: DEMO_CATALOGUE.cues, positions: [own], players: [], played: [] };
    const { model } = await openBackup({ contents: { ...OTHER, ...one } });
    await model.into.pick(picked(await backupText()));
    expect(model.into.incoming.value).toMatchObject({
      isBlankHere: false,
      plan: { mode: 'merge' },
    });
  });

  it('says what a replacement would do as soon as that is chosen', async () => {
    const { model } = await openBackup({ contents: OTHER });
    await model.into.pick(picked(await backupText()));
    model.into.setMode('replace');
    expect(model.into.incoming.value).toMatchObject({
      plan: { mode: 'replace', changes: { cues: { removed: ['Her cue'] } } },
    });
  });

  it('refuses a damaged one with the line that is wrong', async () => {
    const lines = (await backupText()).split('\n');
    const damaged = lines.map((line, at) => (at === 6 ? line.replace('m', 'n') : line));
    const { model, store } = await openBackup({ contents: OTHER });
    const before = await contentsOf(store);
    await model.into.pick(picked(damaged.join('\n')));
    expect(model.into.incoming.value).toMatchObject({ kind: 'refused', line: 7 });
    await model.into.bringIn();
    expect(await contentsOf(store)).toEqual(before);
  });

  it('refuses one too large to be a backup, and one that cannot be read, without a line', async () => {
    const { model } = await openBackup();
    const text = async (): Promise<string> => {
      throw new DOMException('', 'NotReadableError');
    };
    await model.into.pick({ name: 'film.mov', size: 1e9, text });
    expect(model.into.incoming.value).toMatchObject({ line: null, fault: { reason: 'too-large' } });
    await model.into.pick({ name: 'in-a-cloud.json', size: 10, text });
    expect(model.into.incoming.value).toMatchObject({
      kind: 'refused',
      fileName: 'in-a-cloud.json',
      line: null,
      fault: { reason: 'not-opened' },
    });
  });

  it('tells what had to be mended by the names a person knows', async () => {
    const wide = { store: 'cues', row: { ...MY_CUE, tipDiameterM: 0.06 } };
    const text = await resealed(await backupText(), (lines) =>
      lines.map((line) =>
        line.store === 'cues' && JSON.stringify(line.row).includes('"mine"') ? wide : line,
      ),
    );
    const { model } = await openBackup({ contents: OTHER });
    await model.into.pick(picked(text));
    expect(model.into.incoming.value).toMatchObject({
      kind: 'planned',
      mended: [
        { store: 'cues', name: MY_CUE.name, label: 'Tip diameter', was: '60 mm', now: '15 mm' },
      ],
    });
  });

  it('shows the one picked last, however long the first takes', async () => {
    const { model } = await openBackup();
    const text = await backupText();
    let finish = (_text: string) => {};
    const slow = {
      name: 'slow.json',
      size: 1,
      text: () => new Promise<string>((r) => (finish = r)),
    };
    const first = model.into.pick(slow);
    expect(model.into.incoming.value).toEqual({ kind: 'reading', fileName: 'slow.json' });
    await model.into.pick(picked(text, 'quick.json'));
    finish(text);
    await first;
    expect(model.into.incoming.value).toMatchObject({ kind: 'planned', fileName: 'quick.json' });
  });

  it('can be left', async () => {
    const { model, done } = await openBackup();
    const picking = model.into.pick(picked(await backupText()));
    model.into.leave();
    await picking;
    expect(model.into.incoming.value).toEqual({ kind: 'none' });
    await model.into.bringIn();
    expect(done).not.toContain('reload');
  });
});

describe('bringing it in', () => {
  it('adds to what is here, and loads the page anew after saving what was pending', async () => {
    const opened = await openBackup({ contents: OTHER });
    await opened.model.into.pick(picked(await backupText()));
    opened.done.length = 0;
    await opened.model.into.bringIn();
    expect(opened.done).toEqual(['flush', 'reload']);
    expect(await namesOf(opened)).toEqual(expect.arrayContaining(['Her cue', MY_CUE.name]));
    expect((await contentsOf(opened.store)).desk).toEqual(DEFAULT_DESK);
  });

  it('replaces what is here', async () => {
    const opened = await openBackup({ contents: OTHER });
    await opened.model.into.pick(picked(await backupText()));
    opened.model.into.setMode('replace');
    await opened.model.into.bringIn();
    expect(await contentsOf(opened.store)).toEqual(CONTENTS);
  });

  it('lets nothing on screen be saved over it', async () => {
    const { model, store, gate } = await openBackup({ contents: OTHER });
    await model.into.pick(picked(await backupText()));
    model.into.setMode('replace');
    await model.into.bringIn();
    gate.store.draftDesk(DEFAULT_DESK);
    void gate.store.saveDesk(DEFAULT_DESK);
    void gate.store.put('cues', HERS);
    expect(model.into.incoming.value.kind).toBe('working');
    expect(await contentsOf(store)).toEqual(CONTENTS);
  });

  it('asks again where what is here has changed since it was shown', async () => {
    const opened = await openBackup({ contents: OTHER });
    const { model, store, done } = opened;
    await model.into.pick(picked(await backupText()));
    await store.put('cues', { ...MY_CUE, massRatio: 30 });
    await model.into.bringIn();
    expect(done).not.toContain('reload');
    expect(model.into.incoming.value).toMatchObject({
      kind: 'planned',
      plan: { changes: { cues: { added: [], changed: [MY_CUE.name] } } },
      problem: 'changed-meanwhile',
    });
    await model.into.bringIn();
    expect(done).toContain('reload');
    expect((await contentsOf(store)).cues).toContainEqual(MY_CUE);
  });

  it('says why where it could not be done, and saves what was held back', async () => {
    const { model, store, gate, done } = await openBackup({
      contents: OTHER,
      over: { importBackup: async () => ({ ok: false, reason: 'full' }) },
    });
    await model.into.pick(picked(await backupText()));
    const bringing = model.into.bringIn();
    await Promise.resolve();
    const saving = gate.store.saveDesk({ ...DEFAULT_DESK, playerId: 'player-student' });
    await bringing;
    await saving;
    expect(model.into.incoming.value).toMatchObject({ kind: 'planned', problem: 'full' });
    expect(done).not.toContain('reload');
    expect((await contentsOf(store)).desk.playerId).toBe('player-student');
  });
});
