import { signal } from '@preact/signals';
import { expect, it } from 'vitest';
import type { SharePort } from '../../../../src/sensors/share-file';
import { createCardsModel } from '../../../../src/state/cards/cards-model';
import { openMeasure } from '../measure/open-measure';

const PNG = new Uint8Array([1, 2, 3]);

/** Cards of an invented kit, whose steps are done when `step` is called. */
async function openCards(over: Partial<SharePort> = {}) {
  const { kit, desk, measure } = await openMeasure();
  const waiting: (() => void)[] = [];
  const isSettled = signal(true);
  const downloaded: string[] = [];
  const cards = createCardsModel({
    kit,
    desk,
    measure: { knowledge: measure.knowledge, isSettled },
    sharing: {
      prefersSheet: false,
      canShare: () => true,
      share: async () => undefined,
      download: (file) => downloaded.push(file.name),
      ...over,
    },
    print: null,
    soon(work) {
      waiting.push(work);
      return () => {
        waiting.splice(0, waiting.length, ...waiting.filter((other) => other !== work));
      };
    },
  });
  const step = () => waiting.shift()?.();
  /** Does all steps, and counts them. */
  const finish = () => {
    let steps = 0;
    for (; waiting.length > 0; steps++) step();
    return steps;
  };
  return { cards, kit, desk, isSettled, waiting, step, finish, downloaded };
}

it('works a card out in small steps, while somebody looks, and anew for another table', async () => {
  const { cards, kit, waiting, step, finish } = await openCards();
  expect(waiting).toHaveLength(0);
  const stop = cards.watch();
  step();
  expect(cards.figures.value).toBeNull();
  expect(finish()).toBeGreaterThan(10);
  const first = cards.figures.value;
  expect(first?.level.rows).toHaveLength(4);
  expect(first?.level.rows[2]?.distanceM).toBe(kit.current.tables.value.lengthM / 2);
  expect(waiting).toHaveLength(0);
  const other = kit.shelves.tables.value.find(
    ({ lengthM }) => lengthM !== kit.current.tables.value.lengthM,
  );
  kit.choose('tables', other?.id ?? '');
  expect(cards.figures.value).toBeNull();
  finish();
  expect(cards.figures.value?.level.rows[2]?.distanceM).toBe((other?.lengthM ?? 0) / 2);
  kit.choose('tables', 'demo-table-9ft');
  step();
  stop();
  expect(waiting).toHaveLength(0);
});

it('waits until what readings tell is settled', async () => {
  const { cards, isSettled, waiting, finish } = await openCards();
  isSettled.value = false;
  cards.watch();
  expect(waiting).toHaveLength(0);
  isSettled.value = true;
  finish();
  expect(cards.figures.value).not.toBeNull();
});

it('tells aims as the person does until another unit is asked for', async () => {
  const { cards, desk } = await openCards();
  expect(cards.unit.value).toBe('balls');
  desk.setPreference('lead', 'ghost-ball');
  desk.setPreference('lengthUnit', 'in');
  expect(cards.unit.value).toBe('in');
  cards.setUnit('tips');
  expect(cards.unit.value).toBe('tips');
});

it('hands a picture to the sheet as no text, and is never refused for ever', async () => {
  const offered: string[] = [];
  const { cards, downloaded } = await openCards({
    prefersSheet: true,
    canShare(files) {
      offered.push(...files.map(({ type }) => type));
      return true;
    },
    share: () => Promise.reject(new DOMException('No', 'NotAllowedError')),
  });
  expect(await cards.save('a.png', PNG)).toEqual({ kind: 'again', way: 'download' });
  expect(new Set(offered)).toEqual(new Set(['image/png']));
  expect(await cards.save('a.png', PNG)).toEqual({ kind: 'downloaded', name: 'a.png' });
  expect(downloaded).toEqual(['a.png']);
});
