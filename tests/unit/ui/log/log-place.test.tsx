import { cleanup, screen } from '@testing-library/preact';
import { afterEach, describe, expect, it } from 'vitest';
import { TEST_SHOTS } from '../../../../src/state/log/level-tests';
import type { PlayedShot } from '../../../../src/store/player';
import { PAGE_ROWS } from '../../../../src/ui/controls/Paged';
import { LAID_SHOT, PLAIN_SHOT, STUDENT } from '../../../store/invented-players';
import { openLog, press } from './open-log';

afterEach(cleanup);

const rows = () => [...document.querySelectorAll('.log-row')].map(({ textContent }) => textContent);
const DAY_MS = 24 * 60 * 60 * 1000;

/** So many invented shots of the student's, an hour after the other: every third one went. */
function manyShots(count: number): readonly PlayedShot[] {
  return Array.from({ length: count }, (_, index) => ({
    ...PLAIN_SHOT,
    id: `shot-${index}`,
    atMs: PLAIN_SHOT.atMs + (index * DAY_MS) / 24,
    result: index % 3 === 0 ? 'went' : 'full',
  }));
}

describe('the log', () => {
  it('lists what was played by day, the newest first, in words', async () => {
    await openLog('#log', [
      LAID_SHOT,
      { ...PLAIN_SHOT, atMs: PLAIN_SHOT.atMs + DAY_MS, asMeant: false },
    ]);
    const [newest, oldest] = rows();
    expect(newest).toMatch(
      /^Went.*cut 24° → right, 0\.70 m, high, left side, medium\. not as meant/,
    );
    expect(oldest).toMatch(/^Too full.*medium, far right pocket\. scratched, level test$/);
    const days = [...document.querySelectorAll('.log-day h3')].map(
      ({ textContent }) => textContent,
    );
    expect(days).toHaveLength(2);
    expect(days[0]).toMatch(/1 of 1 went$/);
    expect(days[1]).toMatch(/0 of 1 went$/);
  });

  it('draws a page of thousands, and tells of whole days', async () => {
    await openLog('#log', manyShots(3000));
    expect(rows()).toHaveLength(PAGE_ROWS);
    const days = [...document.querySelectorAll('.log-day h3')].map(
      ({ textContent }) => textContent,
    );
    expect(days[1]).toMatch(/8 of 24 went$/);
  });

  it('has each shot corrected, deleted and put back', async () => {
    const { player, router } = await openLog('#log', [LAID_SHOT, PLAIN_SHOT]);
    (document.querySelector('.log-row') as HTMLElement).click();
    await expect.poll(() => router.route.value.panel).toBe(`shots/${PLAIN_SHOT.id}`);
    await expect.poll(() => screen.queryByRole('button', { name: 'Missed the ball' })).toBeTruthy();
    press('Missed the ball');
    expect(player.played.value.at(-1)?.result).toBe('untouched');
    press('Delete');
    expect(player.played.value.map(({ id }) => id)).toEqual([LAID_SHOT.id]);
    await expect.poll(() => rows().length).toBe(1);
    press(/Put it back/);
    await expect.poll(() => rows()[0]).toMatch(/^Missed the ball/);
  });

  it('offers a deleted shot until another is logged, or Log is left', async () => {
    const { player, log, router } = await openLog('#log', [LAID_SHOT, PLAIN_SHOT]);
    const isOffered = () => screen.queryByRole('button', { name: /Put it back/ }) !== null;
    player.removeShot(PLAIN_SHOT.id);
    await expect.poll(isOffered).toBe(true);
    router.open('practice');
    await screen.findByRole('heading', { name: 'Ladders' });
    router.close();
    await expect.poll(isOffered).toBe(true);
    const asked = log.askShot();
    if (asked === null) throw new Error('there is a shot');
    const became = { result: 'went', scratched: false, cueBall: null, asMeant: true } as const;
    expect(player.log({ ...asked, ...became, testId: null, drill: null }).ok).toBe(true);
    await expect.poll(isOffered).toBe(false);
    player.removeShot(LAID_SHOT.id);
    await expect.poll(isOffered).toBe(true);
    router.goTo('choose');
    await expect.poll(() => player.lastRemoved.value).toBeNull();
    router.goTo('log');
    await expect.poll(() => rows().length).toBe(1);
    expect(isOffered()).toBe(false);
  });

  it('tells a nearly straight shot by the pocket’s sides, one said before to be thin too', async () => {
    const shot = { ...PLAIN_SHOT.shot, cutRad: 0.02 };
    const { router } = await openLog('#log', [{ ...PLAIN_SHOT, shot, result: 'thin' }]);
    expect(rows()[0]).toMatch(/^Passed right.*cut 1° → right/);
    (document.querySelector('.log-row') as HTMLElement).click();
    await expect.poll(() => router.route.value.panel).toBe(`shots/${PLAIN_SHOT.id}`);
    const side = await screen.findByRole('button', { name: 'Passed right' });
    expect(side.getAttribute('aria-pressed')).toBe('true');
    expect(screen.queryByRole('button', { name: 'Too thin' })).toBeNull();
  });

  it('has the words explained one tap away, and is there again after', async () => {
    const { router } = await openLog('#log');
    press('Words explained');
    expect(router.route.value).toEqual({ place: 'kit', panel: 'words' });
    router.close();
    await expect.poll(() => router.route.value).toEqual({ place: 'log', panel: '' });
  });

  it('is another’s by one tap', async () => {
    const { player } = await openLog('#log', [LAID_SHOT]);
    expect(rows()).toHaveLength(1);
    expect(player.add('Newcomer').ok).toBe(true);
    await expect.poll(() => rows().length).toBe(0);
    await expect.poll(() => screen.queryByRole('button', { name: STUDENT.name })).toBeTruthy();
    press(STUDENT.name);
    await expect.poll(() => rows().length).toBe(1);
  });

  it('says what is known, once there is anything, and asks until then', async () => {
    const { rest } = await openLog('#log');
    press(/^Chances for you: one question/);
    await screen.findByText(/How many of ten/);
    press('6');
    (await screen.findByRole('button', { name: 'Done' })).click();
    await rest();
    await expect
      .poll(() => document.querySelector('.player-known')?.textContent)
      .toMatch(
        /^From 6 made of 10: a table length on, two of three shots are off their line by less than \d+\u00a0mm/,
      );
  });
});

describe('the level test on screen', () => {
  const title = () => document.querySelector('h1')?.textContent;

  it('lays each ball by the diamonds, takes fifteen answers, and tells what they tell', async () => {
    const { player, router } = await openLog('#log/test');
    press('Begin');
    for (let shot = 1; shot <= TEST_SHOTS; shot++) {
      await expect.poll(title).toBe(`Shot ${shot} of ${TEST_SHOTS}`);
      await expect
        .poll(() => document.querySelector('.test-words')?.textContent)
        .toMatch(
          /^Cue ball first diamond from the left, \w+ from the break end\.Ball third diamond/,
        );
      press(shot % 4 === 0 ? 'Too thin' : 'Went');
    }
    await expect.poll(() => router.route.value.panel).toBe('test');
    expect(new Set(player.played.value.map(({ testId }) => testId)).size).toBe(1);
    await expect
      .poll(() => document.querySelector('.test-lines')?.textContent)
      .toMatch(/^A table length on, two of three shots .*\u00a0mm \(as far as is known .*°\)\./);
    expect(document.querySelector('.test-bars li')?.textContent).toMatch(/12 of 15 went$/);
  });

  it('takes an answer back at once, and can be left and gone on with', async () => {
    const { player, router } = await openLog('#log/test/new');
    await expect.poll(() => screen.queryByRole('button', { name: 'Went' })).toBeTruthy();
    await expect.poll(() => document.querySelector('.test-shot.is-stale')).toBeNull();
    press('Went');
    await expect.poll(title).toBe(`Shot 2 of ${TEST_SHOTS}`);
    expect(router.route.value.panel).toBe('test/now');
    press(/Undo/);
    await expect.poll(title).toBe(`Shot 1 of ${TEST_SHOTS}`);
    expect(player.played.value).toEqual([]);
    await expect.poll(() => document.querySelector('.test-shot.is-stale')).toBeNull();
    press('Went');
    await expect.poll(title).toBe(`Shot 2 of ${TEST_SHOTS}`);
    press(/Back/);
    await expect
      .poll(() => screen.queryByRole('button', { name: `Go on: 1 of ${TEST_SHOTS} played` }))
      .toBeTruthy();
  });
});
