import { expect, it, vi } from 'vitest';
import type { DropOutcome } from '../../../src/offline/drop-stored-app';
import { createRepairModel } from '../../../src/state/repair-model';

function open(outcome: DropOutcome, flush: () => Promise<unknown> = async () => undefined) {
  const events: string[] = [];
  const model = createRepairModel({
    drop: async () => {
      events.push('dropped');
      return outcome;
    },
    flush: () => {
      events.push('saved');
      return flush();
    },
    reload: () => events.push('reloaded'),
  });
  return { model, events };
}

it('saves first, then drops the stored app and loads it anew, once', async () => {
  const { model, events } = open('dropped');
  await Promise.all([model.repair(), model.repair()]);
  expect(events).toEqual(['saved', 'dropped', 'reloaded']);
  expect(model.isWorking.value).toBe(true);
});

it('goes ahead although something cannot be saved', async () => {
  const { model, events } = open('dropped', () => Promise.reject(new Error('disk full')));
  await model.repair();
  expect(events).toEqual(['saved', 'dropped', 'reloaded']);
});

it.each(['unreachable', 'not-stored'] as const)(
  'says why where it is %s, loads nothing, and can be tried again',
  async (outcome) => {
    const { model, events } = open(outcome);
    const lines = vi.fn();
    model.problem.subscribe(lines);
    await model.repair();
    await model.repair();
    expect(events).toEqual(['saved', 'dropped', 'saved', 'dropped']);
    expect(model.problem.value).toMatch(/^[A-Z].{40,}\.$/);
    expect(model.isWorking.value).toBe(false);
  },
);
