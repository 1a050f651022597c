import { expect, it } from 'vitest';
import { withinRoom } from '../../../../src/state/backup/within-room';
import { writeBackup } from '../../../../src/store/backup/write-backup';
import { CONTENTS } from '../../../store/backup/invented-contents';
import { LATER_ATTEMPT } from '../../../store/invented-attempts';

const MANY = Array.from({ length: 900 }, (_, at) => ({
  ...LATER_ATTEMPT,
  id: `attempt-${at}`,
  startedAtMs: LATER_ATTEMPT.startedAtMs + at,
}));

it('keeps the kit and the newest readings in their order, and counts what is left out', async () => {
  const { contents, leftOut } = withinRoom({ ...CONTENTS, attempts: MANY });
  const { cues, cloths, balls, tables } = CONTENTS;
  expect(contents).toMatchObject({ cues, cloths, balls, tables });
  expect(contents.attempts).toEqual(MANY.slice(-contents.attempts.length));
  expect(contents.attempts.length).toBeGreaterThan(200);
  const [kept, laid] = [contents.attempts.length, contents.positions.length];
  expect(leftOut).toBe(MANY.length + CONTENTS.positions.length - kept - laid);
  expect((await writeBackup(contents, 0, null)).length).toBeLessThan(200_500);
});

it('keeps the kit and the desk where there is room for nothing else', () => {
  const { contents, leftOut } = withinRoom(CONTENTS, 10);
  expect(contents).toEqual({ ...CONTENTS, attempts: [], positions: [], setAside: [] });
  expect(leftOut).toBe(4);
});
