import { describe, expect, it } from 'vitest';
import { createSaveGate } from '../../../../src/state/backup/save-gate';
import { DEFAULT_DESK } from '../../../../src/store/default-desk';
import { createMemoryStore } from '../../../../src/store/memory-store';
import { createNoticeBoard } from '../../../../src/store/notice-board';
import { contentsOf } from '../../../store/backup/import-text';
import { MY_CUE } from '../../../store/backup/invented-contents';
import { CURVE_ATTEMPT } from '../../../store/invented-attempts';

function setUp() {
  const store = createMemoryStore(createNoticeBoard());
  return { store, gate: createSaveGate(store) };
}

const ofStudent = { ...DEFAULT_DESK, playerId: 'student' } as const;
const ofNewcomer = { ...DEFAULT_DESK, playerId: 'newcomer' } as const;

describe('an open gate', () => {
  it('lets every write through, and its answer back', async () => {
    const { store, gate } = setUp();
    expect(await gate.store.put('cues', MY_CUE)).toEqual({ ok: true });
    await gate.store.put('attempts', CURVE_ATTEMPT);
    await gate.store.saveDesk(ofStudent);
    const { cues, attempts, desk } = await contentsOf(store);
    expect(cues).toContainEqual(MY_CUE);
    expect(attempts).toEqual([CURVE_ATTEMPT]);
    expect(desk.playerId).toBe('student');
    await gate.store.delete('cues', MY_CUE.id);
    await gate.store.delete('attempts', CURVE_ATTEMPT.id);
    expect((await contentsOf(store)).attempts).toEqual([]);
    expect((await contentsOf(store)).cues).not.toContainEqual(MY_CUE);
  });

  it('says at once when something of one’s own is saved, and only then', () => {
    let own = 0;
    const { store } = createSaveGate(createMemoryStore(createNoticeBoard()), () => {
      own += 1;
    });
    void store.put('cues', { ...MY_CUE, origin: 'invented' });
    void store.put('attempts', { ...CURVE_ATTEMPT, readings: {} });
    void store.saveDesk(ofStudent);
    expect(own).toBe(0);
    void store.put('attempts', CURVE_ATTEMPT);
    expect(own).toBe(1);
    void store.put('cues', MY_CUE);
    expect(own).toBe(2);
  });

  it('counts a write once it was answered', async () => {
    const { gate } = setUp();
    const saving = gate.store.saveDesk(ofStudent);
    expect(gate.answered.value).toBe(0);
    await saving;
    expect(gate.answered.value).toBe(1);
  });
});

describe('a closed gate', () => {
  it('holds everything back, the desk’s draft too, but lets one read', async () => {
    const { store, gate } = setUp();
    const before = await contentsOf(store);
    gate.close();
    void gate.store.saveDesk(ofStudent);
    gate.store.draftDesk(ofStudent);
    void gate.store.put('cues', MY_CUE);
    void gate.store.delete('cues', 'demo-cue-stiff');
    void gate.store.put('attempts', CURVE_ATTEMPT);
    expect(await gate.store.readAll()).toEqual({ ok: true, contents: before });
    expect(gate.answered.value).toBe(0);
  });

  it('lets them through in order once it opens', async () => {
    const { store, gate } = setUp();
    gate.close();
    const answers = [gate.store.saveDesk(ofStudent), gate.store.saveDesk(ofNewcomer)];
    gate.close();
    gate.open();
    expect(await Promise.all(answers)).toEqual([{ ok: true }, { ok: true }]);
    expect((await contentsOf(store)).desk.playerId).toBe('newcomer');
  });
});

it('tells of storage only what the store itself says by then', () => {
  let keeps = true;
  const store = createMemoryStore(createNoticeBoard());
  const gate = createSaveGate({
    ...store,
    get keeps() {
      return keeps;
    },
  });
  keeps = false;
  expect(gate.store.keeps).toBe(false);
});

it('tells who watches before anything is written, and after what leaves the page up to date', async () => {
  const told: string[] = [];
  const store = createMemoryStore(createNoticeBoard());
  const noting = (name: string) => () => {
    told.push(name);
    return Promise.resolve({ ok: true as const });
  };
  const writing = { ...store, put: noting('put'), undoImport: noting('undo') };
  const gate = createSaveGate({ ...writing, draftDesk: () => void told.push('draft') }, () => {}, {
    beforeWrite: () => void told.push('before'),
    afterWrite: () => void told.push('after'),
  });
  await gate.store.put('cues', MY_CUE);
  gate.store.draftDesk(ofStudent);
  await gate.store.undoImport();
  expect(told.join(' ')).toBe('before put after before draft after before undo');
  gate.close();
  void gate.store.put('cues', MY_CUE);
  expect(told).toHaveLength(8);
});
