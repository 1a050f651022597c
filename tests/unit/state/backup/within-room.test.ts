import { expect, it } from 'vitest';
import { withinRoom } from '../../../../src/state/backup/within-room';
import { writeBackup } from '../../../../src/store/backup/write-backup';
import type { Lists } from '../../../../src/store/contents';
import { CONTENTS } from '../../../store/backup/invented-contents';
import { LATER_ATTEMPT } from '../../../store/invented-attempts';
import { NO_ROWS, rowsIn } from '../../../store/no-rows';

const MANY = Array.from({ length: 900 }, (_, at) => ({
  ...LATER_ATTEMPT,
  id: `attempt-${at}`,
  startedAtMs: LATER_ATTEMPT.startedAtMs + at,
}));

const { cues, cloths, balls, tables } = CONTENTS;
const KIT = { cues, cloths, balls, tables };

it('keeps the kit and the newest readings in their order, and counts what is left out', async () => {
  const { contents, leftOut } = withinRoom({ ...CONTENTS, attempts: MANY });
  expect(contents).toMatchObject(KIT);
  expect(contents.attempts).toEqual(MANY.slice(-contents.attempts.length));
  expect(contents.attempts.length).toBeGreaterThan(200);
  const rest = (lists: Lists) => rowsIn(lists, (name) => !(name in KIT));
  expect(leftOut).toBe(rest({ ...CONTENTS, attempts: MANY }).length - rest(contents).length);
  expect((await writeBackup(contents, 0, null)).length).toBeLessThan(200_500);
});

it('keeps the kit and the desk where there is room for nothing else', () => {
  const { contents, leftOut } = withinRoom(CONTENTS, 10);
  expect(contents).toEqual({ ...NO_ROWS, ...KIT, desk: CONTENTS.desk, setAside: [] });
  expect(leftOut).toBe(rowsIn(CONTENTS, (name) => !(name in KIT)).length);
});
