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

  it('asks to compare again in earnest only once something has changed', async () => {
    const { comparison } = openChoose('#choose/ways');
    const isMain = (name: string) =>
      screen.queryByRole('button', { name })?.classList.contains('button-primary');
    expect(isMain('Compare all ways')).toBe(true);
    press('Compare all ways');
    await expect.poll(() => isMain('Compare again')).toBe(false);
    comparison.value = { ...comparison.value, isStale: true };
    await expect.poll(() => isMain('Compare again')).toBe(true);
  });

  it('leads with going and ending in the zone where there is one, and says so above', async () => {
    const { comparison, choose } = openChoose('#choose/ways');
    press('Compare all ways');
    const heading = () => document.querySelector('#way-order')?.textContent;
    await expect.poll(heading).toBe('By how often the ball goes');
    const [way] = comparison.value.ways;
    if (!way) throw new Error('there is a way');
    const zoned = { ...way, chance: 0.4, goodPosition: 0.25 };
    comparison.value = { ...comparison.value, ways: [zoned] };
    await expect.poll(heading).toMatch(/in the zone$/);
    expect(rows()[0]?.textContent).toMatch(/^10 %goes and in the zone.*Goes at all 40 %/);
    choose.choose(zoned);
    await expect
      .poll(() => document.querySelector('#chosen-way')?.textContent)
      .toMatch(/^goes and in the zone 10 %/);
  });

  it('draws no map where no way goes, and says what to try', async () => {
    const { comparison, container } = openChoose('#choose/ways');
    press('Compare all ways');
    const { map } = comparison.value;
    if (!map) throw new Error('there is a map');
    const best = map.best.map((row) => row.map(() => null));
    comparison.value = { ...comparison.value, ways: [], map: { ...map, best } };
    await expect.poll(() => container.querySelector('.chance-map')).toBeNull();
    expect(screen.queryByRole('button', { name: 'Look at it' })).toBeNull();
    expect(container.querySelector('.compare-note')?.textContent).toMatch(
      /^No direct way of playing it goes; banks, kicks and combinations were not looked at/,
    );
  });

  it('says what the map shows, and shows none where nothing goes', async () => {
    const { comparison } = openChoose('#choose/ways');
    press('Compare all ways');
    const words = () =>
      screen.queryByRole('img', { name: /^Chance over/ })?.getAttribute('aria-label') ?? '';
    await expect.poll(words).toMatch(/, \d\.\d m\/s: goes about \d+ %/);
    const before = words();
    const { map } = comparison.value;
    if (!map) throw new Error('there is no map');
    const best = map.best.map((row) => row.map(() => null));
    comparison.value = { ...comparison.value, map: { ...map, best } };
    await expect.poll(words).toBe('');
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
    expect(lines[0]).toMatch(/^A true: (\d\.\d up, \d\.\d from the left|scratch in the)/);
  });

  it('goes to Shot with one tap', async () => {
    const { sent, choose, router } = await look();
    press('Aim it');
    expect(sent.value).toBe(choose.chosen.value);
    expect(router.route.value.place).toBe('shot');
  });

  it('names each path by the letter of its line', async () => {
    const { container } = await look();
    const letters = [...container.querySelectorAll('.fan-end text')].map((one) => one.textContent);
    const listed = [...container.querySelectorAll('.fan-lines b')].map((one) => one.textContent);
    expect(listed).toEqual(['A', 'B', 'C', 'D', 'E']);
    expect([...letters].sort()).toEqual(listed);
    expect(screen.getByText(/^Dots: .* ring/)).toBeTruthy();
  });

  it('gives the list back as far down as it was, the focus where it was', async () => {
    openChoose('#choose/ways');
    press('Compare all ways');
    await expect.poll(() => rows().length).toBeGreaterThan(3);
    const place = document.querySelector('.choose-place');
    if (!place) throw new Error('there is a place');
    place.scrollTop = 123;
    const name = rows()[2]?.getAttribute('data-way');
    (rows()[2] as HTMLElement).click();
    await expect.poll(() => screen.queryByRole('button', { name: 'Aim it' })).toBeTruthy();
    expect(place.scrollTop).toBe(0);
    (document.activeElement as HTMLElement).blur();
    press(/All ways/);
    await expect.poll(() => rows().length).toBeGreaterThan(3);
    expect(place.scrollTop).toBe(123);
    expect(document.activeElement?.getAttribute('data-way')).toBe(name);
  });

  it('cannot be aimed once it is stale, and offers to compare again', async () => {
    const { comparison, choose } = await look();
    const named = (name: string) => screen.queryByRole<HTMLButtonElement>('button', { name });
    expect(named('Compare again')).toBeNull();
    comparison.value = { ...comparison.value, isStale: true };
    await expect
      .poll(() => named('Compare again')?.classList.contains('button-primary'))
      .toBe(true);
    expect(named('Aim it')?.disabled).toBe(true);
    const before = comparison.value;
    press('Compare again');
    expect(comparison.value).not.toBe(before);
    expect(choose.comparison.value.isStale).toBe(false);
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
    const after = words;
    const told = container.querySelector('.cell-picker p')?.textContent;
    await expect.poll(() => container.querySelector('.cell-picker')).toBeNull();
    press(/All ways/);
    await expect.poll(after).toBe(told);
  });
});
