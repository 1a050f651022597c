import { cleanup, screen } from '@testing-library/preact';
import { afterEach, describe, expect, it } from 'vitest';
import { press } from '../open-choose';
import { folds, look, openDone, rowOf, rows, text } from './open-all-ways';

afterEach(cleanup);

describe('the order of the list', () => {
  it('says what it is ordered by, and is ordered by how often each goes at a tap', async () => {
    const { choose } = await openDone();
    expect(text('.compare-note')).toBe('12 of 22 ways found, wisest first.');
    expect(text('.order-row p')).toMatch(
      /^Worth is how often you would win .* by what each leaves\./,
    );
    press('Likeliest first');
    await expect.poll(() => text('.compare-note')).toBe('12 of 22 ways found, likeliest first.');
    expect(rowOf('kick').textContent).toMatch(
      / goes .* worth \d in 10 · then yours 5 in 10 · else theirs/,
    );
    for (const fold of folds()) if (fold.getAttribute('aria-expanded') !== 'true') fold.click();
    await expect.poll(() => rows().length).toBe(12);
    const listed = rows().map(({ dataset }) => dataset.way);
    const ordered = choose.all.search.value.ways.map(({ key }) => key);
    const [own] = folds();
    const isAbove = (row: HTMLElement) =>
      own === undefined || (row.compareDocumentPosition(own) & 4) !== 0;
    expect(rows().filter(isAbove).at(-1)?.textContent).toContain('Safety');
    expect([...listed].sort()).toEqual([...ordered].sort());
    press('Wisest first');
    await expect.poll(() => rows()[0]?.textContent).toContain('Safety');
  });

  it('tells no figure where nobody answered the question', async () => {
    const { player } = await openDone();
    player.answer(null);
    await expect.poll(() => player.isKnown.value).toBe(false);
    await expect.poll(() => text('.way-lead')).toBe('best for most');
    const told = rows().map(({ textContent }) => textContent ?? '');
    expect(told.filter((row) => / in 10|worth|%/.test(row))).toEqual([]);
    expect(rowOf('bank').textContent).toMatch(/ the pot \w+ · then yours fair · else theirs fair$/);
    expect(rowOf('Safety').textContent).toMatch(
      / theirs hard · often hooked · now and then a foul of yours$/,
    );
    rowOf('bank').click();
    await expect.poll(() => text('#chosen-way')).toContain('bank');
    expect(document.querySelector('.way-fan')?.textContent).not.toMatch(/ in 10|worth/i);
    expect(text('.way-why')).toBe('When it goes, your next is mostly the 8 near left: fair.');
  });
});

describe('what an opened way is worth', () => {
  it('says why it is worth that, and to which side it is better missed', async () => {
    await look('bank');
    const why = [...document.querySelectorAll('.way-why')].map(({ textContent }) => textContent);
    expect(why).toEqual([
      expect.stringMatching(
        /^When it goes, \d in 10 times, your next is mostly the 8 near left, which goes 5 in 10\.$/,
      ),
      'Missed thin they have 2 in 10, missed full 7 in 10: miss thin.',
      expect.stringMatching(
        /^When the turn passes to them, \d in 10 times, their best shot goes 6 in 10, if they play as well; they are hooked 1 in 10; with ball in hand, by your foul, 1 in 10\.$/,
      ),
    ]);
    expect(text('#way-sentence')).toMatch(
      /Worth .* in 10\. When it goes, .*: miss thin\. When the turn/,
    );
  });

  it('says how far the bed’s slope turns it, where a firmer stroke turns less', async () => {
    await look('kick');
    expect([...document.querySelectorAll('.way-why')].at(-1)?.textContent).toBe(
      'The bed’s slope turns this 1.1° at this speed; a quarter firmer, 0.7°.',
    );
  });

  it('tells of a safety where both balls stop, draws both spreads, and lays the cue', async () => {
    const { container } = await look('Safety');
    expect(text('#chosen-way')).toBe('Safety, straight to the 3');
    expect(container.querySelectorAll('.fan-spread')).toHaveLength(2);
    expect(container.querySelectorAll('.ball-path.is-falling')).toHaveLength(1);
    const stops = [...container.querySelectorAll('.fan-lines li')].map((line) => line.textContent);
    expect(stops).toEqual([
      expect.stringMatching(/^A The cue ball: [\d.]+ along, /),
      expect.stringMatching(/^The 3: [\d.]+ along, /),
    ]);
    expect(text('.way-why')).toMatch(
      /their best shot goes 2 in 10, if they play as well; they are hooked 4 in 10; /,
    );
    expect(text('#way-sentence')).toMatch(
      /^Safety, straight to the 3\. Worth 8 in 10\. When the turn passes .*Point the cue at .*The 3: /,
    );
    await expect
      .poll(() => container.querySelector('.table-board svg')?.getAttribute('aria-label'))
      .toMatch(/Safety, straight to the 3\. Where both balls stop .*: The cue ball: .*; The 3: /);
    for (const name of ['Log how it went', 'Share', 'Keep']) {
      expect(screen.queryByRole('button', { name })).toBeNull();
    }
    press('Aim it');
    await expect.poll(() => container.querySelectorAll('.board-aim').length).toBe(1);
    expect(text('.aim-point')).toMatch(/^Point the cue at the /);
  });
});
