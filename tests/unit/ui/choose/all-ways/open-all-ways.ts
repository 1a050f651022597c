import { screen, within } from '@testing-library/preact';
import { expect } from 'vitest';
import { type ShownWay, struckAs } from '../../../../../src/state/choose/all-ways/shown-way';
import type { SavedPosition } from '../../../../../src/store/saved-position';
import type { Answers } from '../../../state/choose/invented-work';
import { CUT } from '../invented-choose';
import { openChoose } from '../open-choose';

/** The 3 and the pocket as they are chosen, or neither. */
const ANY: SavedPosition = { ...CUT, zone: null, goal: { ...CUT.goal, ball: null, pocket: null } };

export const rows = () => [...document.querySelectorAll<HTMLElement>('.all-way-row')];
export const strokeOf = (way: ShownWay | null) => way && struckAs(way.told).option.stroke;
export const text = (css: string) => document.querySelector(css)?.textContent ?? '';
export const chip = (name: string) =>
  within(screen.getByRole('group', { name: /^Ways to list/ })).getByRole('button', {
    name: new RegExp(`^${name}`),
  });

/** All ways as they are looked for. */
export async function openAll(answers: Answers = {}, position = ANY) {
  const opened = openChoose('#choose/ways', position, answers);
  opened.rest();
  await expect.poll(() => opened.choose.all.search.value.state).not.toBe('none');
  return opened;
}

/** The same once all is looked at, with what is folded away folded. */
export async function openFolded(answers: Answers = {}, position = ANY) {
  const opened = await openAll(answers, position);
  await expect.poll(() => opened.choose.all.search.value.state).toBe('done');
  await expect.poll(() => rows().length).toBeGreaterThan(0);
  return opened;
}

/** The rows that stand for several. */
export const folds = () => [...document.querySelectorAll<HTMLElement>('.way-fold')];

/** All once it is looked at, with a row each. */
export async function openDone(answers: Answers = {}, position = ANY) {
  const opened = await openFolded(answers, position);
  for (const fold of folds()) fold.click();
  const all = opened.choose.all.search.value.ways.length;
  await expect.poll(() => rows().length).toBe(all);
  return opened;
}

export const rowOf = (words: string) => {
  const row = rows().find(({ textContent }) => textContent?.includes(words));
  if (!row) throw new Error(`there is a row of ${words}`);
  return row;
};

/** A way that is opened from the list, by words of its row. */
export async function look(words: string) {
  const opened = await openDone();
  rowOf(words).click();
  await expect.poll(() => text('#chosen-way')).toContain(words);
  return opened;
}
