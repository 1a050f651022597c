import { expect, it, vi } from 'vitest';
import type { DropOutcome } from '../../../src/offline/drop-stored-app';
import { createRepairModel } from '../../../src/state/repair-model';
import { type DraftStorage, notedText } from '../../../src/store/noted-text';

function open(
  outcome: DropOutcome,
  flush: () => Promise<unknown> = async () => undefined,
  noted = new Map<string, string>(),
) {
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
    done: notedText(() => storageOn(noted), 'repaired'),
    now: () => 1_790_000_000_000,
  });
  return { model, events, noted };
}

const storageOn = (noted: Map<string, string>): DraftStorage => ({
  getItem: (key) => noted.get(key) ?? null,
  setItem: (key, text) => void noted.set(key, text),
  removeItem: (key) => void noted.delete(key),
});

it('tells the page that it brings when that was, and no page after it', async () => {
  const { model, noted } = open('dropped');
  expect(model.doneAtMs).toBeNull();
  await model.repair();
  expect(open('dropped', undefined, noted).model.doneAtMs).toBe(1_790_000_000_000);
  expect(open('dropped', undefined, noted).model.doneAtMs).toBeNull();
});

it('tells of none that was not done', async () => {
  const { model, noted } = open('unreachable');
  await model.repair();
  expect(open('dropped', undefined, noted).model.doneAtMs).toBeNull();
});

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
