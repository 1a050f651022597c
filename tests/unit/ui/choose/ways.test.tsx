import { cleanup, screen } from '@testing-library/preact';
import { afterEach, describe, expect, it } from 'vitest';
import { openChoose, press } from './open-choose';

afterEach(cleanup);

const rows = () => [...document.querySelectorAll('.way-row')];

describe('comparing the ways', () => {
  it('lists them with their chance, the easiest first, and draws the map', async () => {
    openChoose('#choose/ways');
    press('Compare all ways');
    await expect.poll(() => rows().length).toBeGreaterThan(3);
    const chances = rows().map((row) => Number.parseInt(row.textContent ?? '', 10));
    expect(chances).toEqual([...chances].sort((a, b) => b - a));
    expect(screen.getByRole('img', { name: /^Chance over side and speed/ })).toBeTruthy();
    const cells = [...document.querySelectorAll('.chance-cell text')];
    expect(cells.length).toBeGreaterThan(0);
    expect(cells.every((cell) => /^(\d+|·)$/.test(cell.textContent ?? ''))).toBe(true);
  });

  it('greys them and says so once they are stale', async () => {
    const { comparison, container } = openChoose('#choose/ways');
    press('Compare all ways');
    comparison.value = { ...comparison.value, isStale: true };
    await expect.poll(() => container.querySelector('.ways.is-stale')).toBeTruthy();
    expect(container.querySelector('.compare-note')?.textContent).toContain('compare again');
  });

  it('says what the map shows, and says it anew when that changes', async () => {
    const { comparison } = openChoose('#choose/ways');
    press('Compare all ways');
    const words = () =>
      screen.queryByRole('img', { name: /^Chance over/ })?.getAttribute('aria-label') ?? '';
    await expect.poll(words).toMatch(/, \d\.\d m\/s: goes \d+ %/);
    const before = words();
    const { map } = comparison.value;
    if (!map) throw new Error('there is no map');
    const best = map.best.map((row) => row.map(() => null));
    comparison.value = { ...comparison.value, map: { ...map, best } };
    await expect.poll(words).toContain('nothing goes');
    comparison.value = { ...comparison.value, map };
    await expect.poll(words).toBe(before);
  });

  it('shows how far it has come, and can be stopped', async () => {
    const { comparison } = openChoose('#choose/ways');
    comparison.value = { ...comparison.value, state: 'running', progress: 0.42 };
    await expect.poll(() => screen.queryByRole('progressbar')).toBeTruthy();
    expect(screen.getByRole('progressbar').textContent).toBe('42 %');
    press('Stop');
    expect(comparison.value.state).toBe('stopped');
  });
});

describe('a way that is looked at', () => {
  async function look() {
    const open = openChoose('#choose/ways');
    press('Compare all ways');
    await expect.poll(() => rows().length).toBeGreaterThan(0);
    (rows()[0] as HTMLElement).click();
    await expect.poll(() => screen.queryByRole('button', { name: 'Aim it' })).toBeTruthy();
    return open;
  }

  it('draws true, thin, full and misses, and says the same in words', async () => {
    const { container } = await look();
    const hits = ['missed-thin', 'missed-full', 'thin', 'full', 'true'];
    const drawn = [...container.querySelectorAll('.fan-path')].map((path) =>
      path.getAttribute('class'),
    );
    expect(drawn).toEqual(hits.map((hit) => `fan-path is-${hit}`));
    const lines = [...container.querySelectorAll('.fan-lines li')].map((line) => line.textContent);
    expect(lines).toHaveLength(5);
    expect(lines[0]).toMatch(/^true: (\d\.\d up, \d\.\d from the left|scratch in the)/);
  });

  it('goes to Shot with one tap', async () => {
    const { sent, choose, router } = await look();
    press('Aim it');
    expect(sent.value).toBe(choose.chosen.value);
    expect(router.route.value.place).toBe('shot');
  });

  it('gives the list back', async () => {
    const { choose } = await look();
    press(/All ways/);
    expect(choose.chosen.value).toBeNull();
    await expect.poll(() => rows().length).toBeGreaterThan(3);
  });

  it('warns of a raised cue and defers to the room', async () => {
    const { choose, comparison, container } = await look();
    const raised = comparison.value.ways.find(({ way }) => way.isRaised);
    const way = comparison.value.ways[0];
    if (!way) throw new Error('there is no way');
    choose.choose(raised ?? { ...way, way: { ...way.way, isRaised: true } });
    await expect
      .poll(() => container.querySelector('.way-warning')?.textContent)
      .toMatch(/cloth.*off the table.*room’s rules/);
  });
});

describe('a cell of the map', () => {
  it('is picked by buttons and looked at', async () => {
    const { choose, container } = openChoose('#choose/ways');
    press('Compare all ways');
    await expect.poll(() => container.querySelector('.cell-picker')).toBeTruthy();
    const words = () => container.querySelector('.cell-picker p')?.textContent ?? '';
    press('More left side');
    press('More left side');
    await expect.poll(words).toContain('← left');
    const before = words();
    press('More right side');
    await expect.poll(words).not.toBe(before);
    press('Look at it');
    expect(choose.chosen.value).not.toBeNull();
  });
});
