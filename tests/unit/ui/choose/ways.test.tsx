import { cleanup, screen } from '@testing-library/preact';
import { afterEach, describe, expect, it } from 'vitest';
import type { Option } from '../../../../src/engine/plan/solve-option';
import { settle } from '../../state/choose/open-choose';
import { CUT } from './invented-choose';
import { openChoose, openCompared, press } from './open-choose';

afterEach(cleanup);

const NO_SDS = { direction: 1, side: 0, height: 0, elevation: 0, speed: 0, kit: 0 };
const heading = () => document.querySelector('#way-order')?.textContent;
const rows = () => [...document.querySelectorAll('.way-row')];

describe('comparing the ways', () => {
  it('lists them with their chance, the easiest first, and draws the map', async () => {
    await openCompared();
    await expect.poll(() => rows().length).toBeGreaterThan(3);
    const told = rows().map((row) => row.querySelector('.way-chance')?.textContent ?? '');
    expect(told.every((words) => /^(\d in 10|rarely|nearly all)$/.test(words))).toBe(true);
    const chances = told.map((words) => Number.parseInt(words, 10) || 0);
    expect(chances).toEqual([...chances].sort((a, b) => b - a));
    expect(screen.getByRole('img', { name: /^Chance over side and speed/ })).toBeTruthy();
    const cells = [...document.querySelectorAll('.chance-cell text')];
    expect(cells.length).toBeGreaterThan(0);
    expect(cells.every((cell) => /^(\d|10|·)$/.test(cell.textContent ?? ''))).toBe(true);
  });

  it('greys them and says so once they are stale, and no more once that is undone', async () => {
    const { choose, container } = await openCompared();
    choose.nudge('cue', 0.02, 0);
    await expect.poll(() => container.querySelector('.ways.is-stale')).toBeTruthy();
    expect(container.querySelector('.compare-note')?.textContent).toContain('comparing anew');
    choose.undo();
    await expect.poll(() => container.querySelector('.ways.is-stale')).toBeNull();
  });

  it('begins by itself, and offers to compare again only where that was stopped', async () => {
    const { choose, rest } = openChoose('#choose/ways', CUT, {
      refine: () => new Promise(() => {}),
    });
    const again = () => screen.queryByRole('button', { name: 'Compare again' });
    expect(again()).toBeNull();
    rest();
    await expect.poll(() => screen.queryByRole('button', { name: 'Stop' })).toBeTruthy();
    expect(again()).toBeNull();
    choose.stop();
    await expect.poll(again).toBeTruthy();
    rest();
    expect(choose.comparison.value.state).toBe('stopped');
    press('Compare again');
    expect(choose.comparison.value.state).toBe('running');
  });

  it('compares nothing while balls are laid', async () => {
    const { choose, rest, router } = openChoose('#choose');
    rest();
    expect(choose.comparison.value.state).toBe('none');
    router.open('play');
    await expect
      .poll(() => {
        rest();
        return choose.comparison.value.state;
      })
      .not.toBe('none');
  });

  it('leads with how often the ball goes where there is no zone', async () => {
    await openCompared({ ...CUT, zone: null });
    await expect.poll(heading).toBe('For Student “A”, the likeliest first: pot without a scratch');
  });

  it('leads with going and ending in the zone where there is one, and says so above', async () => {
    const { choose } = await openCompared();
    await expect.poll(heading).toMatch(/pot and zone$/);
    const [way] = choose.comparison.value.ways;
    if (!way) throw new Error('there is a way');
    const inTen = (share: number) => `${Math.round(10 * share)} in 10`;
    const both = inTen(way.chance * 0.25);
    expect(rows()[0]?.textContent).toMatch(
      new RegExp(`^${both}goes and in the zone.*The pot alone: ${inTen(way.chance)}`),
    );
    choose.choose(way);
    await expect
      .poll(() => document.querySelector('#chosen-way')?.textContent)
      .toMatch(new RegExp(`^goes and in the zone ${both}`));
  });

  it('tells nobody’s ways apart by how easy they are beside the easiest, and asks in one line', async () => {
    const { player, router } = await openCompared({ ...CUT, zone: null });
    player.answer(null);
    await expect.poll(heading).toBe('For most players, the easiest first');
    const words = () => rows().map((row) => row.querySelector('.way-chance')?.textContent);
    expect(words()[0]).toBe('easiest');
    expect(new Set(words()).size).toBeGreaterThan(1);
    expect(rows()[0]?.querySelector('.way-label')?.textContent).toMatch(/^(easy|fair|hard)$/);
    press(/one question/);
    expect(router.route.value.panel).toBe('ways/question');
    await screen.findByText(/How many of ten/);
    press('6');
    (await screen.findByRole('button', { name: 'Done' })).click();
    await expect.poll(() => words()[0]).toMatch(/in 10$/);
    expect(screen.queryByRole('button', { name: /one question/ })).toBeNull();
  });

  it('draws no map where no way goes, and says what to try', async () => {
    const { container } = await openCompared(CUT, { sweep: () => [] });
    expect(container.querySelector('.chance-map')).toBeNull();
    expect(screen.queryByRole('button', { name: 'Look at it' })).toBeNull();
    await expect
      .poll(() => container.querySelector('.compare-note')?.textContent)
      .toMatch(/^No direct way of playing it goes: look at All, for banks, kicks/);
  });

  it('says what the map shows, and shows none of what was before where nothing goes now', async () => {
    let goes = true;
    const some: readonly Option[] = [
      {
        place: 0,
        stroke: { aimRad: 0, side: 0, height: 0, elevationRad: 0.05, speedMps: 1 },
        chance: { share: 0.4, sds: NO_SDS },
      },
    ];
    const { choose } = await openCompared(CUT, { sweep: () => (goes ? some : []) });
    const words = () =>
      screen.queryByRole('img', { name: /^Chance over/ })?.getAttribute('aria-label') ?? '';
    await expect.poll(words).toMatch(/, \d\.\d m\/s: goes about 4 in 10/);
    goes = false;
    choose.compare();
    await expect.poll(() => choose.comparison.value.state).toBe('done');
    await expect.poll(words).toBe('');
  });

  it('shows how far it has come, and can be stopped', async () => {
    const { choose, rest } = openChoose('#choose/ways', CUT, {
      refine: () => new Promise(() => {}),
    });
    rest();
    const bar = () => screen.queryByRole('progressbar')?.textContent;
    // All is swept, and nothing worked out in full.
    await expect.poll(bar).toBe('60 %');
    press('Stop');
    expect(choose.comparison.value.state).toBe('stopped');
    await expect.poll(bar).toBeUndefined();
  });
});

describe('a way that is looked at', () => {
  async function look() {
    const opened = await openCompared();
    await expect.poll(() => rows().length).toBeGreaterThan(0);
    (rows()[0] as HTMLElement).click();
    await expect.poll(() => opened.choose.fan.value.length).toBe(5);
    await expect.poll(() => screen.queryByRole('button', { name: 'Aim it' })).toBeTruthy();
    return opened;
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
    expect(lines[0]).toMatch(/^A true: (\d\.\d along, \d\.\d from the left|scratch in the)/);
  });

  it('goes to Shot with one tap', async () => {
    const { shot, choose, router } = await look();
    const stroke = choose.chosen.value?.option.stroke;
    press('Aim it');
    expect(stroke).toMatchObject({
      side: shot.shot.value.side,
      speedMps: shot.shot.value.speedMps,
    });
    expect(router.route.value.place).toBe('shot');
  });

  it('is kept to be practised by one tap, as it lies, and leads there by another', async () => {
    const { choose, router } = await look();
    const way = choose.chosen.value;
    press('Keep');
    await expect.poll(() => choose.drills.value.length).toBe(1);
    const [kept] = choose.drills.value;
    expect(kept).toMatchObject({ balls: choose.open.value.balls, goal: choose.open.value.goal });
    expect(kept?.drill).toMatchObject({ kind: 'direct', tries: [] });
    expect(kept?.drill?.stroke.speedMps).toBe(way?.option.stroke.speedMps);
    expect(kept?.name).toMatch(/^3 far right: /);
    expect(choose.saved.value.map(({ id }) => id)).not.toContain(kept?.id);
    (await screen.findByRole('button', { name: '✓ Kept: practise' })).click();
    expect(router.route.value).toEqual({ place: 'log', panel: `practice/${kept?.id}` });
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
    await openCompared();
    await expect.poll(() => rows().length).toBeGreaterThan(3);
    const place = document.querySelector('.choose-sheet');
    if (!place) throw new Error('there is a sheet');
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
    const { choose } = await look();
    const named = (name: string) => screen.queryByRole<HTMLButtonElement>('button', { name });
    expect(named('Compare again')).toBeNull();
    choose.nudge('cue', 0.02, 0);
    await expect
      .poll(() => named('Compare again')?.classList.contains('button-primary'))
      .toBe(true);
    expect(named('Aim it')?.disabled).toBe(true);
    press('Compare again');
    expect(choose.comparison.value.state).toBe('running');
    expect(choose.comparison.value.isStale).toBe(false);
  });

  it('warns of a raised cue and defers to the room', async () => {
    const { choose, container } = await look();
    const raised = choose.comparison.value.ways.find(({ way }) => way.isRaised);
    if (!raised) throw new Error('one of the ways is raised');
    choose.choose(raised);
    await expect
      .poll(() => container.querySelector('.way-warning')?.textContent)
      .toMatch(/cloth.*off the table.*room’s rules/);
  });
});

describe('a cell of the map', () => {
  it('is picked by buttons and looked at', async () => {
    const { choose, container } = await openCompared();
    await expect.poll(() => container.querySelector('.cell-picker')).toBeTruthy();
    const words = () => container.querySelector('.cell-picker p')?.textContent ?? '';
    for (let presses = 0; presses < 8; presses++) {
      press('More left side');
      await settle();
    }
    expect(words()).toMatch(/tips? left/);
    const before = words();
    press('More right side');
    await expect.poll(words).not.toBe(before);
    const told = words();
    press('Look at it');
    await expect.poll(() => choose.chosen.value).not.toBeNull();
    await expect.poll(() => container.querySelector('.cell-picker')).toBeNull();
    press(/All ways/);
    await expect.poll(words).toBe(told);
  });
});
