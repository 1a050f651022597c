import { describe, expect, it } from 'vitest';
import { findDigest } from '../../../src/store/backup/backup-format';
import { parseBackup } from '../../../src/store/backup/parse-backup';
import { planImport } from '../../../src/store/backup/plan-import';
import { writePlayer } from '../../../src/store/backup/write-backup';
import type { Contents } from '../../../src/store/contents';
import { contentsAfter } from '../../../src/store/contents-after';
import { FORMER_MADE } from '../../../src/store/parse-player';
import { LAID_SHOT, NEWCOMER, PLAIN_SHOT, STUDENT } from '../invented-players';
import { SAVED_AT_MS, TEXT } from './invented-backup';
import { CONTENTS } from './invented-contents';
import { resealed } from './resealed';

const ALONE = await writePlayer(STUDENT, [LAID_SHOT, PLAIN_SHOT], SAVED_AT_MS, findDigest());

async function read(text: string) {
  const parsed = await parseBackup(text, findDigest());
  if (!parsed.ok) throw new Error(`${parsed.line}: ${parsed.fault.reason}`);
  return parsed.backup;
}

/** Somebody else's device. */
const ELSEWHERE: Contents = { ...CONTENTS, players: [NEWCOMER], played: [] };

describe('the file of one player', () => {
  it('adds that player and their shots elsewhere, and nothing else', async () => {
    const backup = await read(ALONE);
    expect(backup).toMatchObject({ isPart: true, told: ['players', 'played'], repairs: [] });
    const plan = planImport(ELSEWHERE, backup, 'merge');
    expect(plan.changes.players).toMatchObject({ added: [STUDENT.name], left: [NEWCOMER.name] });
    expect(contentsAfter(ELSEWHERE, plan)).toEqual({
      ...ELSEWHERE,
      players: [STUDENT, NEWCOMER],
      played: [LAID_SHOT, PLAIN_SHOT],
    });
  });

  it('changes nothing where all of it is, and keeps a later change', async () => {
    const backup = await read(ALONE);
    const { toPut } = planImport(CONTENTS, backup, 'merge');
    expect([toPut.players, toPut.played, toPut.cues]).toEqual([[], [], []]);
    const later = { ...STUDENT, madeOf10: 8, changedAtMs: STUDENT.changedAtMs + 1 };
    const here = { ...CONTENTS, players: [later] };
    expect(planImport(here, backup, 'merge').toPut.players).toEqual([]);
    const earlier = { ...later, changedAtMs: 0 };
    expect(planImport({ ...here, players: [earlier] }, backup, 'merge').toPut.players).toEqual([
      STUDENT,
    ]);
  });

  it('is refused by its line where a shot of it is beyond repair', async () => {
    const forged = await resealed(ALONE, (lines) =>
      lines.map((line) =>
        line.store === 'played' ? { ...line, row: { ...(line.row as object), result: 'x' } } : line,
      ),
    );
    expect(await parseBackup(forged, findDigest())).toMatchObject({
      ok: false,
      line: 3,
      fault: { reason: 'unreadable' },
    });
  });

  it('is no whole backup for leaving out that it is a part', async () => {
    const forged = await resealed(ALONE, (lines) =>
      lines.map(({ isPart: _part, ...line }) => line),
    );
    expect(await parseBackup(forged, findDigest())).toMatchObject({
      ok: false,
      fault: { reason: 'missing', store: 'cues' },
    });
  });
});

describe('a backup from before there were players', () => {
  /** The same rows as version 4 of the database held them. */
  const older = (player: string) =>
    resealed(TEXT, ([header, ...rows]) => {
      const left = rows
        .filter(({ store }) => store !== 'players' && store !== 'played')
        .map(({ store, row }) => {
          const { playerId: _id, ...rest } = row as object & { playerId?: string };
          return { store, row: store === 'desk' ? { ...rest, player } : row };
        });
      return [{ ...header, schema: 4, lines: left.length }, ...left];
    });

  it('brings its desk’s player along where it takes the place of what is here', async () => {
    const backup = await read(await older('beginner'));
    const plan = planImport(ELSEWHERE, backup, 'replace');
    const { players, played, desk } = contentsAfter(ELSEWHERE, plan);
    expect(players).toMatchObject([{ madeOf10: FORMER_MADE.beginner }]);
    expect(played).toEqual([]);
    expect(desk).not.toHaveProperty('player');
    expect(backup.repairs).toEqual([]);
  });

  it('adds nobody where it is added to what is here', async () => {
    const plan = planImport(ELSEWHERE, await read(await older('steady')), 'merge');
    expect(contentsAfter(ELSEWHERE, plan).players).toEqual([NEWCOMER]);
  });
});
