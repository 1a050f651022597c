import { expect, it } from 'vitest';
import { findDigest } from '../../src/store/backup/backup-format';
import { type Backup, parseBackup } from '../../src/store/backup/parse-backup';
import { planImport } from '../../src/store/backup/plan-import';
import { writeBackup } from '../../src/store/backup/write-backup';
import type { Contents } from '../../src/store/contents';
import { contentsAfter } from '../../src/store/contents-after';
import type { ImportPlan } from '../../src/store/store-port';
import { LIST_NAMES } from '../../src/store/stores';
import { parseHash } from '../../src/ui/route';
import { backupFaultWords } from '../../src/words/store-words';
import { CAMPAIGN_TIMEOUT_MS, campaignSize, tell } from '../harness/campaign-size';
import { pick } from '../harness/damage-text';
import { hostileBackup } from '../harness/hostile-backups';
import { hostileHash } from '../harness/hostile-hashes';
import { seededRandom } from '../harness/seeded-random';
import { CONTENTS, MY_CUE } from '../store/backup/invented-contents';

const CASES = campaignSize(1000, 100_000);
const SAVED_AT_MS = 1_800_000_000_000;

/** What lies on the device: frozen to the last field, so that whoever writes to it throws. */
const HERE: Contents = freeze(
  structuredClone({
    ...CONTENTS,
    cues: [MY_CUE, { ...MY_CUE, id: 'here', name: 'Kept here' }],
    attempts: CONTENTS.attempts.slice(1),
  }),
);

function freeze<T>(value: T): T {
  if (typeof value === 'object' && value !== null) {
    for (const field of Object.values(value)) freeze(field);
    Object.freeze(value);
  }
  return value;
}

/** Every row of what can be listed, by where it lies. */
const listsOf = (contents: ImportPlan['toPut'] | Contents) =>
  LIST_NAMES.map((name): readonly { readonly id: string }[] => contents[name]);

/** Carries a plan out, and gives what is there then. */
function carriedOut(backup: Backup, mode: ImportPlan['mode'], forged: string): Contents {
  const plan = planImport(HERE, backup, mode);
  const after = contentsAfter(HERE, plan);
  const [before, put, there] = [listsOf(HERE), listsOf(plan.toPut), listsOf(after)];
  for (const [index, rows] of there.entries()) {
    const planned = new Set(put[index]);
    const ids = new Set([...planned].map(({ id }) => id));
    const stays = mode === 'merge' ? (before[index] ?? []).filter(({ id }) => !ids.has(id)) : [];
    expect(new Set(rows), forged).toEqual(new Set([...stays, ...planned]));
  }
  expect(after.desk, forged).toBe(plan.toPut.desk ?? HERE.desk);
  return after;
}

/** What was taken in is as good as our own: saved and read once more, nothing of it changes. */
async function expectSettled(contents: Contents, forged: string): Promise<void> {
  const text = await writeBackup(contents, SAVED_AT_MS, null);
  const again = await parseBackup(text, null);
  if (!again.ok) throw new Error(`line ${again.line}: ${again.fault.reason} ${forged}`);
  expect(again.backup.repairs, forged).toEqual([]);
  expect(await writeBackup(again.backup.contents, SAVED_AT_MS, null), forged).toBe(text);
}

const prototypes = () =>
  [Object, Array, String, Function, Promise].map(({ prototype }) =>
    Object.getOwnPropertyNames(prototype).join(),
  );

it(
  `takes ${CASES} hostile files for what they are: refused by a line, or done just as planned`,
  async () => {
    const untouched = prototypes();
    const text = await writeBackup(CONTENTS, SAVED_AT_MS, findDigest());
    const random = seededRandom(20_261_125);
    let taken = 0;
    for (let index = 0; index < CASES; index += 1) {
      const forged = await hostileBackup(text, random);
      const parsed = await parseBackup(forged, random() < 0.5 ? findDigest() : null);
      if (!parsed.ok) {
        expect(backupFaultWords(parsed.fault)).toMatch(/^[A-Z].{10,70}\.$/);
        expect(parsed.line).toBeGreaterThanOrEqual(1);
        expect(parsed.line).toBeLessThanOrEqual(Math.max(1, forged.split('\n').length));
        continue;
      }
      taken += 1;
      const after = carriedOut(parsed.backup, pick(random, ['merge', 'replace']), forged);
      await expectSettled(after, forged);
    }
    expect(prototypes()).toEqual(untouched);
    expect(taken).toBeGreaterThan(CASES * 0.1);
    expect(taken).toBeLessThan(CASES * 0.7);
    tell(`${CASES} hostile files: ${taken} taken, ${CASES - taken} refused`);
  },
  CAMPAIGN_TIMEOUT_MS,
);

it(`reads ${CASES} hostile links as a place of the app, and the rest of them as text`, {
  timeout: CAMPAIGN_TIMEOUT_MS,
}, () => {
  const random = seededRandom(20_261_126);
  const places = new Set<string>();
  for (let index = 0; index < CASES; index += 1) {
    const hash = hostileHash(random);
    const { place, panel } = parseHash(hash);
    places.add(place);
    expect(hash.endsWith(panel), hash).toBe(true);
    expect(parseHash(`#${place}/${panel}`), hash).toEqual({ place, panel });
  }
  expect([...places].sort()).toEqual(['choose', 'kit', 'log', 'shot']);
});
