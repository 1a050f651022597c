import { beforeEach, expect, it } from 'vitest';
import { createScreenKeeper } from '../../../src/state/screen-keeper';
import type { NotedText } from '../../../src/store/noted-text';

let text: string | null;
let isFull: boolean;
beforeEach(() => {
  [text, isFull] = [null, false];
});
const note: NotedText = {
  get: () => text,
  set(next) {
    if (next !== null && isFull) return false;
    text = next;
    return true;
  },
};

/** A page that shows what it is said to show, and frames that come when the test has them. */
function open(by: string) {
  let due: (() => void)[] = [];
  const page = { shows: `what ${by} shows` };
  const keeper = createScreenKeeper({
    note,
    by,
    noteScreen: () => note.set(`1\n${page.shows}`),
    afterFrame: () => new Promise((resolve) => due.push(resolve)),
  });
  const frame = async () => {
    for (const resolve of due) resolve();
    due = [];
    await Promise.resolve();
  };
  return { page, keeper, frame };
}

const isShown = () => text?.startsWith('1\n') ?? false;

it('is noted as a page is left, and gone before anything is written', () => {
  const { keeper } = open('a');
  keeper.keep();
  expect(text).toBe('1\nwhat a shows');
  keeper.beforeWrite();
  expect(isShown()).toBe(false);
});

it('is not noted again before the write is answered, and what it changed is drawn', async () => {
  const { keeper, frame } = open('a');
  keeper.beforeWrite();
  await frame();
  keeper.keep();
  expect(isShown()).toBe(false);
  keeper.afterWrite();
  keeper.keep();
  expect(isShown()).toBe(false);
  await frame();
  keeper.keep();
  expect(isShown()).toBe(true);
});

it('waits for the last of several writes', async () => {
  const { keeper, frame } = open('a');
  keeper.beforeWrite();
  keeper.beforeWrite();
  keeper.afterWrite();
  await frame();
  keeper.keep();
  expect(isShown()).toBe(false);
  keeper.afterWrite();
  keeper.beforeWrite();
  await frame();
  keeper.keep();
  expect(isShown()).toBe(false);
});

it('is not noted by a page beside which another has written', async () => {
  const [a, b] = [open('a'), open('b')];
  b.keeper.beforeWrite();
  a.keeper.keep();
  expect(isShown()).toBe(false);
  b.keeper.afterWrite();
  await b.frame();
  b.keeper.keep();
  a.keeper.keep();
  expect(text).toBe('1\nwhat b shows');
});

it('is not noted by a page opened while another was writing, until it writes itself', async () => {
  open('killed').keeper.beforeWrite();
  const { keeper, frame } = open('b');
  keeper.keep();
  expect(isShown()).toBe(false);
  keeper.beforeWrite();
  keeper.afterWrite();
  await frame();
  keeper.keep();
  expect(text).toBe('1\nwhat b shows');
});

it('is gone though there is no room to say who writes', () => {
  const { keeper } = open('a');
  keeper.keep();
  isFull = true;
  keeper.beforeWrite();
  expect(text).toBeNull();
});
