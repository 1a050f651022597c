import { signal } from '@preact/signals';
import { expect, it } from 'vitest';
import { TABLE_RUNS, type TableRuns } from '../../../src/units/table-run';
import { openShot } from './open-shot';

it('tells speeds in m/s until what tells them in lengths has come, and in lengths from then on', () => {
  const tableRuns = signal<TableRuns | null>(null);
  const { model } = openShot({ speedMps: 2 }, { speedUnit: 'lengths' }, { tableRuns });
  expect(model.speedScale.value.unit).toBe('mps');
  expect(model.fields.speed.value.figure).toBe(2);
  tableRuns.value = TABLE_RUNS;
  expect(model.speedScale.value.unit).toBe('lengths');
  // Some three lengths of nine feet on an ordinary cloth (common practice, no source).
  expect(model.fields.speed.value.figure).toBeGreaterThan(2);
  expect(model.fields.speed.value.figure).toBeLessThan(4);
});
