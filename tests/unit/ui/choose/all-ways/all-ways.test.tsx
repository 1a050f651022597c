import { cleanup, screen } from '@testing-library/preact';
import { afterEach, describe, expect, it } from 'vitest';
import { CUT } from '../invented-choose';
import { openChoose, press } from '../open-choose';
import { chip, folds, openAll, openDone, openFolded, rowOf, rows, text } from './open-all-ways';

afterEach(cleanup);

describe('the list of all ways', () => {
  it('tells of each what it is worth, what falls where and how, and draws its paths', async () => {
    await openDone();
    expect(rows()).toHaveLength(12);
    expect(rowOf('bank').textContent).toMatch(
      /^\d in 10 worth The 3 into the far right, bank off the left rail\. No side, \w+, roll, scratch 1 in 10 goes \d in 10 · then yours 5 in 10 · else theirs 6 in 10$/,
    );
    expect(rowOf('Safety').textContent).toMatch(
      /^8 in 10 worth Safety, straight to the 3\. No side, \w+, roll; the cue ball stops .*, the 3 .* theirs 2 in 10 · they are hooked 4 in 10 · you foul 1 in 10$/,
    );
    expect(rowOf('off the far rail to the 3')).toBeTruthy();
    expect(rowOf('kick').textContent).toContain('kick off the near, then the right rail');
    expect(rowOf('combination').textContent).toContain('combination, the 3 off the 8');
    for (const row of rows()) {
      expect(row.querySelectorAll('.way-picture .ball-path').length).toBeGreaterThan(0);
    }
  });

  it('counts each kind, and lists the one that is pressed', async () => {
    await openDone();
    // Invented workers find ten, three direct cuts, three banks, two kicks, two combinations; two safeties.
    const counts = [...document.querySelectorAll('.kind-chip')].map((one) => one.textContent);
    // Each was found twice.
    expect(counts).toEqual([
      'All12/22',
      'Cuts3/6',
      'Banks3/6',
      'Kicks2/4',
      'Combos2/4',
      'Caroms0',
      'Safety2',
    ]);
    chip('Kicks').click();
    await expect.poll(() => rows().length).toBe(2);
    expect(chip('Kicks').getAttribute('aria-pressed')).toBe('true');
    expect(rows().every(({ textContent }) => textContent?.includes('kick'))).toBe(true);
  });

  it('folds away of each kind what is far less good than the best, and opens it at a tap', async () => {
    const { choose } = await openFolded();
    // Invented: two safeties worth 0.8 and 0.7, and ten ways worth 0.45 at most, of four kinds.
    expect(folds().map(({ textContent }) => textContent)).toEqual([
      '2 more cuts: far behind, or much like one above',
      '2 more banks: far behind, or much like one above',
      '1 more kick: far behind, or much like one above',
      '1 more combination: far behind, or much like one above',
    ]);
    expect(rows()).toHaveLength(6);
    const [cuts] = folds();
    cuts?.click();
    await expect.poll(() => rows().length).toBe(8);
    expect(folds()[0]?.getAttribute('aria-expanded')).toBe('true');
    expect(text('.compare-note')).toMatch(/^12 of 22 ways found/);
    cuts?.click();
    await expect.poll(() => rows().length).toBe(6);
    choose.all.show('bank');
    await expect.poll(() => rows().length).toBe(3);
    expect(folds()).toEqual([]);
    expect(text('.compare-note')).toBe('3 of 6 banks found, wisest first.');
  });

  it('stands where more is known than it counts, says so, and looks anew when told', async () => {
    const { choose, knowledge, rest } = await openFolded();
    const before = rows().map(({ dataset }) => dataset.way);
    expect(screen.queryByRole('button', { name: 'Look again' })).toBeNull();
    const { spread, ...known } = knowledge.value;
    knowledge.value = { ...known, spread: { ...spread, massRatio: spread.massRatio / 2 } };
    await expect.poll(() => screen.queryByRole('button', { name: 'Look again' })).toBeTruthy();
    rest();
    expect(choose.all.search.value.state).toBe('done');
    expect(rows().map(({ dataset }) => dataset.way)).toEqual(before);
    press('Look again');
    await expect.poll(() => choose.all.search.value.isOutrun).toBe(false);
    await expect.poll(() => screen.queryByRole('button', { name: 'Look again' })).toBeNull();
  });

  it('says in a sentence why there is none of a kind', async () => {
    await openDone();
    chip('Caroms').click();
    await expect.poll(() => rows().length).toBe(0);
    expect(text('.no-ways')).toBe('No carom goes: mostly, a ball is in the way.');
  });

  it('says what is looked for, and what may be hit first', async () => {
    const { choose } = await openDone();
    expect(text('.status-line')).toContain('Any ball into any pocket.');
    choose.allow('lowest');
    await expect.poll(() => text('.status-line')).toContain('the lowest hit first');
  });

  it('stands beside the straight shot’s own list, which all of it stays', async () => {
    const { choose, rest } = openChoose('#choose/ways', { ...CUT, zone: null });
    rest();
    await expect.poll(() => choose.comparison.value.state).toBe('done');
    await expect.poll(() => screen.queryByRole('img', { name: /^Chance over/ })).toBeTruthy();
    expect(chip('Cuts').getAttribute('aria-pressed')).toBe('true');
    chip('All').click();
    await expect.poll(() => screen.queryByRole('img', { name: /^Chance over/ })).toBeNull();
    await expect
      .poll(() => {
        rest();
        return rows().length;
      })
      .toBeGreaterThan(0);
    chip('Cuts').click();
    await expect.poll(() => screen.queryByRole('img', { name: /^Chance over/ })).toBeTruthy();
  });

  it('can be stopped, keeps what was found, and says so', async () => {
    let asked = 0;
    const { choose } = await openAll({
      waysSearch: ({ stretch }) => {
        asked++;
        const at = 'stroke' in stretch ? stretch.stroke : 0;
        return at < 6 ? { ways: [], failed: [] } : new Promise(() => {});
      },
    });
    await expect.poll(() => text('.compare-note')).toMatch(/^6 of \d+ looked at, 0 ways so far/);
    expect(screen.getByRole('progressbar', { name: 'Ways looked at' })).toBeTruthy();
    press('Stop');
    await expect.poll(() => text('.compare-note')).toBe('Stopped early: 0 ways so far.');
    expect(choose.all.search.value.state).toBe('stopped');
    const before = asked;
    press('Look again');
    await expect.poll(() => asked).toBeGreaterThan(before);
  });

  it('keeps its rows where they are for who reads them, and puts them in order when told', async () => {
    let letGo = () => {};
    const held = new Promise<void>((resolve) => (letGo = resolve));
    const { choose } = await openAll({
      waysNone: () => held.then(() => []),
    });
    await expect.poll(() => rows().length).toBe(12);
    const shown = () => rows().map(({ dataset }) => dataset.way);
    const before = shown();
    rows()[4]?.focus();
    letGo();
    await expect.poll(() => choose.all.search.value.state).toBe('done');
    await expect.poll(() => screen.queryByRole('button', { name: 'Put in order' })).toBeTruthy();
    expect(shown()).toEqual(before);
    press('Put in order');
    const ordered = choose.all.search.value.ways.map(({ key }) => key);
    await expect.poll(shown).not.toEqual(before);
    // What is folded away has no row.
    expect(shown()).toEqual(ordered.filter((key) => shown().includes(key)));
    expect(shown()).not.toEqual(before.filter((key) => shown().includes(key)));
  });
});
