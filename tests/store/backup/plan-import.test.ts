import { describe, expect, it } from 'vitest';
import type { Backup } from '../../../src/store/backup/parse-backup';
import { planImport } from '../../../src/store/backup/plan-import';
import type { Contents } from '../../../src/store/contents';
import { DEFAULT_DESK } from '../../../src/store/default-desk';
import { DEMO_CATALOGUE } from '../../../src/store/demo-catalogue';
import { CONTENT_STORES } from '../../../src/store/stores';
import { CURVE_ATTEMPT, LATER_ATTEMPT } from '../invented-attempts';
import { BANK_POSITION, LATER_POSITION } from '../invented-positions';
import { NO_ROWS } from '../no-rows';
import { CONTENTS, MY_CUE } from './invented-contents';

/** A device on which nothing has been entered yet. */
const FRESH: Contents = {
  desk: DEFAULT_DESK,
  ...NO_ROWS,
  ...DEMO_CATALOGUE,
  setAside: [],
};

function backupOf(contents: Contents, repairs: Backup['repairs'] = []): Backup {
  const whole = { savedAtMs: 0, schema: 5, contents, told: CONTENT_STORES, isPart: false };
  return { ...whole, repairs, checkedBy: 'sha256' };
}

const withCues = (...cues: Contents['cues']): Contents => ({
  ...FRESH,
  cues,
});

const demoCueNames = ['Stiff cue', 'House cue', 'Low-squirt cue', 'Very low-squirt cue'];
const [STIFF] = DEMO_CATALOGUE.cues;
if (!STIFF) throw new Error('no demo cue');

describe('planning to merge', () => {
  it('adds what is new and leaves the rest, the desk too', () => {
    const { changes, toPut } = planImport(FRESH, backupOf(CONTENTS), 'merge');
    const none = { added: [], changed: [], removed: [] };
    expect(changes.cues).toEqual({ ...none, added: [MY_CUE.name], left: demoCueNames });
    expect(changes.cloths).toEqual({
      ...none,
      left: ['Fast new cloth', 'Club cloth', 'Worn cloth'],
    });
    expect(changes.attempts).toEqual({ ...none, added: ['curve', 'curve'], left: [] });
    expect(changes.positions).toEqual({
      ...none,
      added: [LATER_POSITION.name, BANK_POSITION.name],
      left: [],
    });
    expect(changes.desk).toEqual({ ...none, left: ['desk'] });
    expect(changes['set-aside']).toEqual({ ...none, added: ['cues', 'desk'], left: [] });
    expect(toPut).toEqual({
      ...CONTENTS,
      cues: [MY_CUE],
      cloths: [],
      balls: [],
      tables: [],
      desk: null,
    });
  });

  it('takes the backup’s record where both have one and they differ', () => {
    const here = withCues({ ...MY_CUE, massRatio: 33 }, STIFF);
    const there = withCues(STIFF, MY_CUE);
    const { changes, toPut } = planImport(here, backupOf(there), 'merge');
    expect(changes.cues).toEqual({
      added: [],
      changed: [MY_CUE.name],
      removed: [],
      left: ['Stiff cue'],
    });
    expect(toPut.cues).toEqual([MY_CUE]);
  });

  it('sees no difference in the order of the fields of a record', () => {
    const { id, name, ...rest } = MY_CUE;
    const { changes } = planImport(
      withCues(MY_CUE),
      backupOf(withCues({ ...rest, name, id })),
      'merge',
    );
    expect(changes.cues.left).toEqual([MY_CUE.name]);
  });

  it('never removes anything', () => {
    const { changes } = planImport(CONTENTS, backupOf(withCues(STIFF)), 'merge');
    expect(Object.values(changes).flatMap(({ removed }) => removed)).toEqual([]);
    expect(changes.cues.left).toEqual([...demoCueNames, MY_CUE.name]);
    expect(changes.attempts.left).toEqual(['curve', 'curve']);
  });

  it('takes the backup’s attempt, unless the present one has come further', () => {
    const further = { ...LATER_ATTEMPT, readings: { timeS: 1.2 }, stepsDone: ['timeS'] };
    const struckOut = { ...CURVE_ATTEMPT, isStruckOut: true };
    const here = { ...FRESH, attempts: [CURVE_ATTEMPT, further] };
    const there = { ...FRESH, attempts: [struckOut, LATER_ATTEMPT] };
    expect(planImport(here, backupOf(there), 'merge').toPut.attempts).toEqual([struckOut]);
    expect(planImport(there, backupOf(here), 'merge').toPut.attempts).toEqual([
      CURVE_ATTEMPT,
      further,
    ]);
  });

  it('takes the backup’s position, unless the present one was changed later', () => {
    const since = { ...BANK_POSITION, zone: null, changedAtMs: BANK_POSITION.changedAtMs + 1 };
    const renamed = { ...LATER_POSITION, name: 'Renamed' };
    const here = { ...FRESH, positions: [since, LATER_POSITION] };
    const there = { ...FRESH, positions: [BANK_POSITION, renamed] };
    expect(planImport(here, backupOf(there), 'merge').toPut.positions).toEqual([renamed]);
    expect(planImport(there, backupOf(here), 'merge').toPut.positions).toEqual([
      since,
      LATER_POSITION,
    ]);
  });

  it('changes nothing the second time', () => {
    const { changes, toPut } = planImport(CONTENTS, backupOf(CONTENTS), 'merge');
    expect(Object.values(changes).flatMap(({ added, changed }) => [...added, ...changed])).toEqual(
      [],
    );
    expect(toPut).toEqual({
      ...NO_ROWS,
      desk: null,
      setAside: [],
    });
  });
});

describe('planning to replace', () => {
  it('tells what will be gone, and puts what the backup says', () => {
    const there = {
      ...withCues(STIFF, { ...MY_CUE, id: 'other', name: 'Other' }),
      attempts: [LATER_ATTEMPT],
      positions: [BANK_POSITION],
    };
    const { changes, toPut } = planImport(CONTENTS, backupOf(there), 'replace');
    expect(changes.cues).toEqual({
      added: ['Other'],
      changed: [],
      removed: [...demoCueNames.slice(1), MY_CUE.name],
      left: ['Stiff cue'],
    });
    expect(changes.attempts).toEqual({
      added: [],
      changed: [],
      removed: ['curve'],
      left: ['curve'],
    });
    expect(changes.positions).toEqual({
      added: [],
      changed: [],
      removed: [LATER_POSITION.name],
      left: [BANK_POSITION.name],
    });
    expect(changes.desk.changed).toEqual(['desk']);
    expect(changes['set-aside'].removed).toEqual(['cues', 'desk']);
    expect(toPut).toEqual(there);
  });

  it('takes the backup’s attempt, however far the present one has come', () => {
    const begun = { ...CURVE_ATTEMPT, readings: {}, stepsDone: [] };
    const there = { ...CONTENTS, attempts: [begun] };
    expect(planImport(CONTENTS, backupOf(there), 'replace').changes.attempts).toEqual({
      added: [],
      changed: ['curve'],
      removed: ['curve'],
      left: [],
    });
  });
});

describe('what had to be mended', () => {
  const ofCue = { store: 'cues', id: 'mine', field: 'massRatio', was: 1e9, now: 200 } as const;
  const ofDesk = {
    store: 'desk',
    id: 'desk',
    field: 'shot.headingRad',
    was: 'n',
    now: null,
  } as const;

  it('is told of, but not of a desk that stays out', () => {
    const backup = backupOf(CONTENTS, [ofCue, ofDesk]);
    expect(planImport(FRESH, backup, 'merge').repairs).toEqual([ofCue]);
    expect(planImport(FRESH, backup, 'replace').repairs).toEqual([ofCue, ofDesk]);
  });
});
