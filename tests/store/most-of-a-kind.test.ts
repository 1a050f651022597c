import { describe, expect, it } from 'vitest';
import { parseBackup } from '../../src/store/backup/parse-backup';
import { planImport } from '../../src/store/backup/plan-import';
import { writeBackup } from '../../src/store/backup/write-backup';
import type { Contents } from '../../src/store/contents';
import { isTooMany, MOST_OF_A_KIND } from '../../src/store/most-of-a-kind';
import { CONTENTS } from './backup/invented-contents';
import { manyContents } from './backup/many-contents';

const SAVED_AT_MS = 1_800_000_000_000;
const DEMO_CUES = CONTENTS.cues.length;
const read = async (contents: Contents) =>
  parseBackup(await writeBackup(contents, SAVED_AT_MS, null), null);
const backupOf = async (contents: Contents) => {
  const parsed = await read(contents);
  if (!parsed.ok) throw new Error(parsed.fault.reason);
  return parsed.backup;
};

describe('as many of a kind as are kept', () => {
  it('come in from a backup', async () => {
    const { contents } = await backupOf(manyContents(MOST_OF_A_KIND - DEMO_CUES, 0, 0));
    expect(contents.cues).toHaveLength(MOST_OF_A_KIND);
  });

  it('and one more are refused by the line of that one, with the reason', async () => {
    const text = await writeBackup(
      manyContents(MOST_OF_A_KIND - DEMO_CUES + 3, 0, 0),
      SAVED_AT_MS,
      null,
    );
    const parsed = await parseBackup(text, null);
    const cueLines = text
      .split('\n')
      .flatMap((line, index) => (/^.{0,10}"cues"/.test(line) ? [index + 1] : []));
    expect(parsed).toMatchObject({ ok: false, line: cueLines[MOST_OF_A_KIND] });
    expect(parsed).toMatchObject({ fault: { reason: 'too-many' } });
  });

  it('are not gone beyond by adding a backup to what is here, though each alone would do', async () => {
    const here = manyContents(0, MOST_OF_A_KIND - 1, 0);
    const [first, second] = manyContents(0, 2, 0).attempts;
    if (!first || !second) throw new Error('two were asked for');
    const more = (...attempts: Contents['attempts']) => ({ ...CONTENTS, attempts });
    const isOver = async (given: Contents, mode: 'merge' | 'replace') =>
      isTooMany(planImport(here, await backupOf(given), mode));
    const [one, other] = [
      { ...first, id: 'one' },
      { ...second, id: 'other' },
    ];
    expect(await isOver(more(first, one), 'merge')).toBe(false);
    expect(await isOver(more(one, other), 'merge')).toBe(true);
    expect(await isOver(more(one, other), 'replace')).toBe(false);
  });

  it('are no reason to refuse where what is here is more already, and does not grow', async () => {
    const here = manyContents(0, MOST_OF_A_KIND + 10, 0);
    const backup = await backupOf({ ...CONTENTS, attempts: here.attempts.slice(0, 5) });
    expect(isTooMany(planImport(here, backup, 'merge'))).toBe(false);
  });
});
