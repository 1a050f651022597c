import { expect, it } from 'vitest';
import { mendedFields } from '../../../../src/state/backup/mended-field';
import type { Repair } from '../../../../src/store/contents';
import { CONTENTS, MY_CUE } from '../../../store/backup/invented-contents';

const told = (repair: Repair) => mendedFields([repair], CONTENTS)[0];

it('tells a number as it is shown', () => {
  const repair = {
    store: 'cues',
    id: 'mine',
    field: 'tipRadiusM',
    was: 'wide',
    now: 0.0095,
  } as const;
  expect(told(repair)).toEqual({
    store: 'cues',
    name: MY_CUE.name,
    label: 'Tip dome radius',
    was: '“wide”',
    now: '9.5 mm',
  });
});

it.each([
  [
    { store: 'positions', id: 'position-bank', field: 'zone', was: 'here', now: null },
    'Past the eight',
    '“here”',
    'nothing',
  ],
  [
    { store: 'attempts', id: 'attempt-curve', field: 'readings.timeS', was: 900, now: undefined },
    'curve',
    '“900”',
    'nothing',
  ],
  [
    { store: 'desk', id: 'desk', field: 'pocket', was: null, now: { mouthM: 0.1 } },
    'desk',
    'nothing',
    'as usual',
  ],
  [
    { store: 'cloths', id: 'gone', field: 'changes', was: { a: 1 }, now: [] },
    'gone',
    'unreadable',
    'nothing',
  ],
  [
    { store: 'cues', id: 'mine', field: 'name', was: 'x'.repeat(90), now: 'y' },
    MY_CUE.name,
    `“${'x'.repeat(40)}”`,
    '“y”',
  ],
] satisfies [Repair, string, string, string][])('tells of %o', (repair, name, was, now) => {
  expect(told(repair)).toMatchObject({ name, label: repair.field, was, now });
});
