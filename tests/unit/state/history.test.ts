import { describe, expect, it } from 'vitest';
import { createHistory } from '../../../src/state/history';

interface Row {
  readonly a: number;
  readonly b: number;
}

/** A row, its history, and what a hand and another tab do to it. */
function openRow() {
  const history = createHistory<Row>();
  let now: Row = { a: 0, b: 0 };
  const to = (next: Row | null) => {
    if (next) now = next;
    return now;
  };
  return {
    history,
    now: () => now,
    change(part: Partial<Row>) {
      const after = { ...now, ...part };
      history.note(now, after);
      now = after;
    },
    elsewhere: (part: Partial<Row>) => to({ ...now, ...part }),
    undo: () => to(history.undo(now)),
    redo: () => to(history.redo(now)),
    revert: () => to(history.revertGesture(now)),
    can: () => [history.canUndo.value, history.canRedo.value],
  };
}

describe('a history', () => {
  it('goes back and forth change by change, as far as there are any', () => {
    const row = openRow();
    expect(row.can()).toEqual([false, false]);
    row.change({ a: 1 });
    row.change({ b: 2 });
    expect(row.undo()).toEqual({ a: 1, b: 0 });
    expect(row.undo()).toEqual({ a: 0, b: 0 });
    expect(row.history.undo(row.now())).toBeNull();
    expect(row.redo()).toEqual({ a: 1, b: 0 });
    expect(row.can()).toEqual([true, true]);
    row.change({ a: 5 });
    expect(row.can()).toEqual([true, false]);
    expect(row.history.redo(row.now())).toBeNull();
  });

  it('takes back what was changed here, and leaves what came from elsewhere', () => {
    const row = openRow();
    row.change({ a: 1 });
    row.change({ a: 2 });
    row.elsewhere({ b: 9 });
    expect(row.undo()).toEqual({ a: 1, b: 9 });
    row.elsewhere({ b: 8 });
    expect(row.undo()).toEqual({ a: 0, b: 8 });
    expect(row.redo()).toEqual({ a: 1, b: 8 });
    row.elsewhere({ a: 7 });
    // Both changed it: what came later stands.
    expect(row.undo()).toEqual({ a: 7, b: 8 });
  });

  it('keeps two hundred changes, and no more', () => {
    const row = openRow();
    for (let a = 1; a <= 250; a++) row.change({ a });
    for (let steps = 0; steps < 250; steps++) row.undo();
    expect(row.now().a).toBe(50);
    for (let steps = 0; steps < 250; steps++) row.redo();
    expect(row.now().a).toBe(250);
  });
});

describe('a gesture', () => {
  it('is one change, however many were made in it', () => {
    const row = openRow();
    row.history.beginGesture();
    expect(row.can()).toEqual([false, false]);
    for (const a of [1, 2, 3]) row.change({ a });
    expect(row.can()).toEqual([false, false]);
    expect(row.history.isUnderWay.value).toBe(true);
    row.history.endGesture();
    expect(row.history.isUnderWay.value).toBe(false);
    row.change({ a: 4 });
    expect(row.undo().a).toBe(3);
    expect(row.undo().a).toBe(0);
  });

  it('that was taken away leaves nothing behind, and takes nothing that can come again', () => {
    const row = openRow();
    row.change({ a: 1 });
    row.undo();
    row.history.beginGesture();
    row.change({ a: 2, b: 2 });
    expect(row.revert()).toEqual({ a: 0, b: 0 });
    expect(row.can()).toEqual([false, true]);
    expect(row.redo().a).toBe(1);
    row.history.beginGesture();
    expect(row.history.revertGesture(row.now())).toBeNull();
  });

  it('that led back to where it began counts for nothing', () => {
    const row = openRow();
    row.history.beginGesture();
    row.change({ a: 1 });
    row.change({ a: 0 });
    row.history.endGesture();
    expect(row.can()).toEqual([false, false]);
  });

  it('takes nothing back that came from elsewhere while it lasted', () => {
    const row = openRow();
    row.history.beginGesture();
    row.change({ a: 1 });
    row.elsewhere({ b: 9 });
    row.change({ a: 2 });
    row.history.endGesture();
    expect(row.undo()).toEqual({ a: 0, b: 9 });
    expect(row.redo()).toEqual({ a: 2, b: 9 });
  });

  it('that goes on while its changes are taken back joins what follows, and nothing before', () => {
    const row = openRow();
    row.change({ a: 1 });
    row.history.beginGesture();
    row.change({ b: 1 });
    expect(row.undo()).toEqual({ a: 1, b: 0 });
    row.change({ b: 2 });
    row.change({ b: 3 });
    row.history.endGesture();
    expect(row.undo()).toEqual({ a: 1, b: 0 });
    expect(row.undo()).toEqual({ a: 0, b: 0 });
  });
});
