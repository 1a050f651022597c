import { createHash } from 'node:crypto';
import { crc32 } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { findDigest } from '../../../src/store/backup/backup-format';
import { parseBackup } from '../../../src/store/backup/parse-backup';
import { writeBackup } from '../../../src/store/backup/write-backup';
import { latestVersion, MIGRATIONS } from '../../../src/store/migrations';
import { CONTENT_STORES } from '../../../src/store/stores';
import { rowsIn } from '../no-rows';
import { LINES, lineOf, SAVED_AT_MS, TEXT } from './invented-backup';
import { CONTENTS, MY_CUE } from './invented-contents';
import { resealed } from './resealed';

const digest = findDigest();

const hexCrc = (text: string) => crc32(Buffer.from(text, 'utf8')).toString(16).padStart(8, '0');

/** What a backup says once it has been read, or why it was refused. */
async function read(text: string, by = digest) {
  return await parseBackup(text, by);
}

describe('the text of a backup', () => {
  it('opens with a header that counts its rows', () => {
    const { crc: _, ...header } = JSON.parse(LINES[0] ?? '');
    expect(header).toEqual({
      leewayBackup: 1,
      app: 'Leeway',
      savedAtMs: SAVED_AT_MS,
      schema: latestVersion(MIGRATIONS),
      lines: rowsIn(CONTENTS).length + 1 + CONTENTS.setAside.length,
    });
    expect(LINES).toHaveLength(1 + header.lines + 1 + 1);
    expect(LINES.at(-1)).toBe('');
  });

  it('has a row a line, each JSON that any program can read', () => {
    const rows = LINES.slice(1, -2).map((line) => JSON.parse(line));
    const count = (store: string) => rows.filter((row) => row.store === store).length;
    expect(rows.find(({ row }) => row.id === 'mine')).toMatchObject({ store: 'cues', row: MY_CUE });
    expect(
      ['cues', 'cloths', 'balls', 'tables', 'attempts', 'positions', 'desk', 'set-aside'].map(
        count,
      ),
    ).toEqual([5, 3, 3, 4, 2, 2, 1, 2]);
  });

  it('seals every line with the CRC-32 of its number and of what it says', () => {
    for (const [index, line] of LINES.slice(0, -2).entries()) {
      const open = line.replace(/,"crc":"[0-9a-f]{8}"\}$/, '');
      expect(JSON.parse(line).crc).toBe(hexCrc(`${index + 1}:${open}`));
    }
  });

  it('ends with the CRC-32 and the SHA-256 of all bytes before', () => {
    const before = LINES.slice(0, -2).map((line) => `${line}\n`);
    expect(JSON.parse(LINES.at(-2) ?? '')).toEqual({
      crc32: hexCrc(before.join('')),
      sha256: createHash('sha256').update(before.join('')).digest('hex'),
    });
  });

  it('ends with the CRC-32 alone where the browser has no SHA-256, or fails to give it', async () => {
    const refuses = () => Promise.reject(new Error('no'));
    for (const none of [null, refuses]) {
      const text = await writeBackup(CONTENTS, SAVED_AT_MS, none);
      expect(Object.keys(JSON.parse(text.split('\n').at(-2) ?? ''))).toEqual(['crc32']);
    }
    expect(findDigest({})).toBeNull();
  });

  it('is the same whatever the order of the shelves', async () => {
    const cues = [...CONTENTS.cues].reverse();
    expect(await writeBackup({ ...CONTENTS, cues }, SAVED_AT_MS, digest)).toBe(TEXT);
  });
});

describe('reading a backup', () => {
  it('gives back everything, and says by what it was checked', async () => {
    const parsed = await read(TEXT);
    expect(parsed).toEqual({
      ok: true,
      backup: {
        savedAtMs: SAVED_AT_MS,
        schema: latestVersion(MIGRATIONS),
        contents: CONTENTS,
        told: CONTENT_STORES,
        isPart: false,
        repairs: [],
        checkedBy: 'sha256',
      },
    });
  });

  it('goes by the CRC-32 where there is no SHA-256 to be had', async () => {
    const without = await writeBackup(CONTENTS, SAVED_AT_MS, null);
    for (const [text, by] of [
      [without, digest],
      [TEXT, null],
    ] as const) {
      const parsed = await read(text, by);
      expect(parsed.ok && parsed.backup.checkedBy).toBe('crc32');
      expect(parsed.ok && parsed.backup.contents).toEqual(CONTENTS);
    }
  });

  it.each([
    ['line ends of a mail program', TEXT.replaceAll('\n', '\r\n')],
    ['some of its line ends changed', TEXT.replace('\n', '\r\n')],
    ['no end to its last line', TEXT.slice(0, -1)],
    ['empty lines after it', `${TEXT}\r\n\n\n`],
    ['a byte order mark', `\uFEFF${TEXT}`],
  ])('takes one with %s for the same', async (_, text) => {
    const parsed = await read(text);
    expect(parsed.ok && parsed.backup.contents).toEqual(CONTENTS);
    expect(parsed.ok && parsed.backup.checkedBy).toBe('sha256');
  });

  it.each(['', 'hello', '{}', '[]', '{"leewayBackup":"1"}', 'null', '{"app":"Leeway"}', '\u0000'])(
    'refuses what is no backup: %j',
    async (text) => {
      const fault = { reason: 'not-ours' };
      expect(await read(text)).toEqual({ ok: false, line: 1, fault });
    },
  );

  it('refuses one too large to look at', async () => {
    expect(await read(' '.repeat(32_000_001))).toMatchObject({ ok: false, line: 1 });
  });

  it('refuses one that a newer version wrote, whatever its lines are like', async () => {
    const fault = { reason: 'newer' };
    const newerForm = '{"leewayBackup":2,"app":"Leeway","seal":"other"}\n???\n';
    expect(await read(newerForm)).toEqual({ ok: false, line: 1, fault });
    const newerRows = await resealed(TEXT, (lines) =>
      lines.with(0, { ...lines[0], schema: latestVersion(MIGRATIONS) + 1 }),
    );
    expect(await read(newerRows)).toEqual({ ok: false, line: 1, fault });
  });

  it('names the line that was damaged', async () => {
    const damaged = TEXT.replace('"massRatio":27', '"massRatio":28');
    expect(await read(damaged)).toMatchObject({ ok: false, line: lineOf('"massRatio":27') });
  });

  it('names the first line out of its place, dropped or doubled', async () => {
    const swapped = [...LINES];
    [swapped[4], swapped[7]] = [LINES[7] ?? '', LINES[4] ?? ''];
    expect(await read(swapped.join('\n'))).toMatchObject({ ok: false, line: 5 });
    expect(await read(LINES.toSpliced(6, 1).join('\n'))).toMatchObject({ ok: false, line: 7 });
    const doubled = LINES.toSpliced(6, 0, LINES[5] ?? '');
    expect(await read(doubled.join('\n'))).toMatchObject({ ok: false, line: 7 });
  });

  it('names where it breaks off', async () => {
    expect(await read(TEXT.slice(0, TEXT.indexOf(LINES[9] ?? '') + 20))).toMatchObject({
      line: 10,
    });
    expect(await read(LINES.slice(0, 9).join('\n'))).toMatchObject({ ok: false, line: 9 });
    expect(await read(`${LINES[0]}\n`)).toMatchObject({ ok: false, line: 1 });
  });

  it('refuses a checksum that is not that of the lines', async () => {
    const last = LINES.length - 1;
    const zeros = '0'.repeat(64);
    for (const wrong of [
      TEXT.replace(/"sha256":"[0-9a-f]{64}"/, `"sha256":"${zeros}"`),
      TEXT.replace(/"crc32":"[0-9a-f]{8}"/, '"crc32":"00000000"'),
      TEXT.replace('"crc32"', '"crc23"'),
    ]) {
      expect(await read(wrong)).toMatchObject({ ok: false, line: last });
    }
  });
});
