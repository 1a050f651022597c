import { describe, expect, it } from 'vitest';
import { findDigest } from '../../../src/store/backup/backup-format';
import { parseBackup } from '../../../src/store/backup/parse-backup';
import type { Contents } from '../../../src/store/contents';
import { CURVE_ATTEMPT } from '../invented-attempts';
import { LINES, lineOf, TEXT } from './invented-backup';
import { CONTENTS, MY_CUE } from './invented-contents';
import { resealed } from './resealed';

async function read(text: string) {
  return await parseBackup(text, findDigest());
}

describe('reading a backup made up to deceive', () => {
  const replaceRow = (part: string, change: (row: Record<string, unknown>) => unknown) =>
    resealed(TEXT, (lines) => {
      const at = lineOf(part) - 1;
      const { store, row } = lines[at] as { store: string; row: Record<string, unknown> };
      return lines.with(at, { store, row: change(row) });
    });

  it.each([
    ['no number of its own', '"id":"mine"', () => ({ id: 'mine', name: 'Mine' })],
    ['no id', '"id":"mine"', ({ id: _, ...row }: Record<string, unknown>) => row],
    ['an id that cannot be read', '"id":"mine"', () => ({ id: { toString: 1 }, massRatio: 20 })],
    ['nothing', '"id":"mine"', () => null],
    ['a stroke no one can play', '"attempt-curve"', () => ({ ...CURVE_ATTEMPT, shot: 1 })],
    ['a desk that is none', '"store":"desk"', () => [1]],
    ['something set aside nowhere', '"raw":"scribble"', () => ({ store: 'attic', raw: 1 })],
  ])('refuses a row with %s, by its line', async (_, part, change) => {
    expect(await read(await replaceRow(part, change))).toMatchObject({
      ok: false,
      line: lineOf(part),
    });
  });

  it('refuses a row that is there twice, by the line of the second', async () => {
    const again = await resealed(TEXT, ([header, ...rows]) => [
      { ...header, lines: rows.length + 1 },
      ...rows,
      { store: 'cues', row: { ...MY_CUE, massRatio: 30 } },
    ]);
    expect(await read(again)).toEqual({
      ok: false,
      line: LINES.length - 1,
      fault: { reason: 'repeated', earlier: lineOf('"id":"mine"') },
    });
  });

  it('refuses a row of a store it does not know', async () => {
    const at = lineOf('"id":"mine"');
    const unknown = await resealed(TEXT, (lines) =>
      lines.with(at - 1, { store: 'secrets', row: {} }),
    );
    expect(await read(unknown)).toMatchObject({ ok: false, line: at });
  });

  it.each(['cues', 'cloths', 'balls', 'tables', 'desk'])(
    'refuses one without %s',
    async (store) => {
      const without = await resealed(TEXT, ([header, ...rows]) => {
        const left = rows.filter((row) => row.store !== store);
        return [{ ...header, lines: left.length }, ...left];
      });
      expect(await read(without)).toMatchObject({
        ok: false,
        line: without.split('\n').length - 1,
        fault: { reason: 'missing', store },
      });
    },
  );

  it('refuses one whose header counts other lines than there are', async () => {
    const miscounted = await resealed(TEXT, (lines) => lines.with(0, { ...lines[0], lines: 3 }));
    expect(await read(miscounted)).toMatchObject({ ok: false, line: LINES.length - 1 });
  });

  it('refuses thousands of ruins like one, by the line of the first', async () => {
    const ruined = await resealed(TEXT, ([header, ...rows]) => {
      const ruins = Array.from({ length: 4_900 }, (_, n) => ({
        store: 'cues',
        row: { id: `${n}` },
      }));
      return [{ ...header, lines: rows.length + ruins.length }, ...rows, ...ruins];
    });
    expect(await read(ruined)).toMatchObject({ ok: false, line: LINES.length - 1 });
  });

  it('tells of every one of many thousands of things it had to mend', async () => {
    const changes = Array.from({ length: 150_000 }, () => 0);
    const parsed = await read(await replaceRow('"id":"mine"', (row) => ({ ...row, changes })));
    expect(parsed.ok && parsed.backup.repairs).toHaveLength(150_000);
  });

  it('mends what can be mended, tells of it, and sets aside what it was', async () => {
    const odd = await replaceRow('"id":"mine"', (row) => ({ ...row, massRatio: 1e9 }));
    const parsed = await read(odd);
    if (!parsed.ok) throw new Error(parsed.fault.reason);
    const { contents, repairs } = parsed.backup;
    expect(repairs).toEqual([
      { store: 'cues', id: 'mine', field: 'massRatio', was: 1e9, now: 200 },
    ]);
    expect(contents.cues.find(({ id }) => id === 'mine')?.massRatio).toBe(200);
    expect(contents.setAside).toEqual([
      ...CONTENTS.setAside,
      { store: 'cues', raw: { ...MY_CUE, massRatio: 1e9 }, reason: 'repaired' },
    ]);
  });

  it('puts in play what the file itself has', async () => {
    const gone = await replaceRow('"store":"desk"', (row) => ({
      ...row,
      choice: { ...CONTENTS.desk.choice, cues: 'sold' },
    }));
    const parsed = await read(gone);
    expect(parsed.ok && parsed.backup.contents.desk.choice.cues).toBe('demo-cue-house');
  });

  it('fills in what rows of an older layout did not have', async () => {
    const older = await resealed(TEXT, ([header, ...rows]) => {
      const left = rows
        .filter(({ store }) => store !== 'attempts' && store !== 'positions')
        .map(({ store, row }) => {
          const {
            changes: _c,
            like: _l,
            recentShots: _r,
            ...first
          } = row as object & {
            readonly [key: string]: unknown;
          };
          return { store, row: first };
        });
      return [{ ...header, schema: 1, lines: left.length }, ...left];
    });
    const parsed = await read(older);
    if (!parsed.ok) throw new Error(parsed.fault.reason);
    const expected: Contents = {
      ...CONTENTS,
      attempts: [],
      positions: [],
      desk: { ...CONTENTS.desk, recentShots: [] },
      cues: CONTENTS.cues.map((cue) => ({ ...cue, changes: [], like: null })),
    };
    expect(parsed.backup).toMatchObject({ schema: 1, contents: expected, repairs: [] });
  });
});
