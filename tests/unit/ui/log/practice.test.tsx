import { cleanup, screen } from '@testing-library/preact';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { playTable } from '../../../../src/engine/table/play-table';
import { LAID_SHOT } from '../../../store/invented-players';
import { KEPT_DRILL } from '../../../store/invented-positions';
import { KNOWN } from '../../state/choose/open-choose';
import { LEVEL_TABLE } from '../../state/log/invented-level';
import { CUT } from '../choose/invented-choose';
import { openLog, press } from './open-log';

afterEach(cleanup);

const title = () => document.querySelector('h1')?.textContent;
const text = (css: string) => document.querySelector(css)?.textContent ?? '';
const isLaid = () =>
  expect.poll(() => document.querySelector('.test-shot:not(.is-stale)')).toBeTruthy();

describe('practice', () => {
  it('says what limits most in one sentence, with its bars, and has the ladder for it first', async () => {
    const { rest, router } = await openLog('#log', [LAID_SHOT]);
    press(/^Practice What limits you most/);
    await expect.poll(() => router.route.value.panel).toBe('practice');
    await rest();
    await expect
      .poll(() => text('.practice-part'))
      .toContain(
        'Their line limits them most: half as far off, it would bring 1.4 more of ten ordinary shots; speed 0.3, knowing the kit 0.1.',
      );
    const bars = [...document.querySelectorAll('.limit-bars li')].map((row) => [
      row.textContent,
      row.querySelector('.limit-gain')?.getAttribute('width'),
    ]);
    expect(bars.map(([words]) => words)).toEqual(['Line+1.4', 'Speed+0.3', 'Knowing the kit+0.1']);
    expect(bars[0]?.[1]).toBe('100%');
    expect(Number.parseFloat(bars[1]?.[1] ?? '')).toBeCloseTo((100 * 0.03) / 0.142, 6);
    const ladders = screen.getAllByRole('button', { name: /›?$/ }).filter(({ dataset }) => {
      return dataset.opens?.startsWith('practice/');
    });
    expect(ladders.map(({ textContent }) => textContent?.split(' ')[0])).toEqual([
      'Line:',
      'Speed',
      'Side',
    ]);
  });

  it('asks for the one question where nothing is known, and has ladders all the same', async () => {
    await openLog('#log/practice');
    expect(text('.practice-part')).toContain('then it is told');
    press(/^Line/);
    await expect.poll(title).toBe('Line: try 1 of 5');
    await isLaid();
    expect(text('.test-words')).toMatch(/For most: fair\.$/);
  });
});

describe('a ladder on screen', () => {
  it('lays a shot by the diamonds, takes five tries of it, and tells what comes of the set', async () => {
    const { player } = await openLog('#log/practice/line', [LAID_SHOT]);
    await isLaid();
    expect(text('.test-words')).toMatch(
      /^Cue ball first diamond from the left.*Far right pocket, medium, at the centre\.For most: fair\.$/,
    );
    for (let made = 1; made <= 4; made++) {
      press('Went');
      await expect.poll(title).toBe(`Line: try ${made + 1} of 5, ${made} made`);
    }
    press('Went');
    await expect.poll(() => text('.test-words')).toMatch(/^5 of 5 made: the next is harder\./);
    await isLaid();
    expect(title()).toBe('Line: try 1 of 5');
    expect(player.played.value.slice(1).map(({ drill }) => drill?.id)).toEqual(
      Array.from({ length: 5 }, () => 'line'),
    );
    press(/Undo/);
    await expect.poll(title).toBe('Line: try 5 of 5, 4 made');
    // What was taken back is not in the log, and is not offered to be put there.
    expect(player.lastRemoved.value).toBeNull();
    expect(player.played.value).toHaveLength(5);
    press(/Back/);
    await expect.poll(() => text('.practice-bars')).toMatch(/^Line, .* 4 of 4 made ±0\.57°$/);
  });

  it('has the cue ball stop on a spot, and asks where it did of a ball that went', async () => {
    const { player } = await openLog('#log/practice/speed', [LAID_SHOT]);
    await isLaid();
    expect(text('.test-words')).toContain(
      'Cue ball to stop within 1 ball of third diamond from the left, seventh from the break end.',
    );
    expect(document.querySelector('.test-spot')).toBeTruthy();
    expect(screen.getByRole('img', { name: /a ring where the cue ball is to stop/ })).toBeTruthy();
    expect(screen.queryByRole('button', { name: 'Went' })).toBeNull();
    press('Past it');
    await expect.poll(title).toBe('Speed: try 2 of 5, 0 made');
    expect(text('.undo-delete')).toMatch(/^Logged: went, rolled past the spot, practice\./);
    press('On the spot');
    press('Too thin');
    await expect.poll(title).toBe('Speed: try 4 of 5, 1 made');
    expect(player.played.value.map(({ drill }) => drill?.rung?.stopped)).toEqual([
      undefined,
      'long',
      'in',
      null,
    ]);
  });
});

it('has its card behind one button, and Back leads to the ladder', async () => {
  const { router } = await openLog('#log/practice/side', [LAID_SHOT]);
  await isLaid();
  press('Card');
  expect(router.route.value).toEqual({ place: 'kit', panel: 'drill/side' });
  router.close();
  await expect.poll(() => router.route.value).toEqual({ place: 'log', panel: 'practice/side' });
});

describe('a way kept to be played again', () => {
  const KEPT = [CUT, KEPT_DRILL];

  it('is in the list with its drawing, its tries are counted, and one is taken back', async () => {
    const { router } = await openLog('#log/practice', [LAID_SHOT], KEPT);
    const row = screen.getByRole('button', { name: /^3 far right, bank off the left rail/ });
    expect(row.textContent).toContain('bank off the left rail, 1 of 2 made');
    expect(row.querySelector('.position-picture')).toBeTruthy();
    row.click();
    await expect.poll(() => router.route.value.panel).toBe(`practice/${KEPT_DRILL.id}`);
    await expect
      .poll(() => text('.test-words'))
      .toMatch(
        /^The 3 into the far right pocket, bank off the left rail\.Point the cue at the far right corner\.Firm: ¼ tip right, cue 2\.9° up, 2\.1 m\/s\..*1 of 2 made\.$/,
      );
    // Of 2.54 m a diamond is 0.3175 m; measured from the break end's left corner.
    expect(text('.test-words')).toContain(
      'Cue ball: 1.8 diamonds along, 1.4 from the left.8 ball: 4.3 diamonds along, 2.0 from the left.3 ball: 6.0 diamonds along, 3.0 from the left.',
    );
    press('Missed');
    await expect.poll(() => text('.test-words')).toContain('1 of 3 made.');
    expect(text('.undo-delete')).toContain('Counted: missed.');
    press(/Undo/);
    await expect.poll(() => text('.test-words')).toContain('1 of 2 made.');
    press('Went');
    await expect.poll(() => text('.test-words')).toContain('2 of 3 made.');
  });

  it('is drawn with the way of each ball that its stroke moves, small and large', async () => {
    const { router } = await openLog('#log/practice', [LAID_SHOT], KEPT);
    if (!KEPT_DRILL.drill) throw new Error('it is a drill');
    const moved = playTable(
      // The cue ball first, as a play has them.
      KEPT_DRILL.balls,
      KEPT_DRILL.drill.stroke,
      KNOWN.kit,
      LEVEL_TABLE.shape,
    );
    if (!moved.ok) throw new Error('it can be struck');
    const moves = moved.balls.filter(({ phases }) => phases.length > 0).length;
    const drawn = (css: string) => document.querySelectorAll(`${css} .ball-path`).length;
    expect(moves).toBeGreaterThan(0);
    await expect.poll(() => drawn('.position-picture')).toBe(moves);
    // No line to a pocket that the ball does not take.
    expect(document.querySelector('.picture-path')).toBeNull();
    router.open(`practice/${KEPT_DRILL.id}`);
    await expect.poll(() => drawn('.test-table')).toBe(moves);
    expect(document.querySelector('.test-table .drill-aim')?.getAttribute('d')).toMatch(/^M.*L/);
  });

  it('has a drill card, one tap behind its button', async () => {
    const { router } = await openLog('#log/practice', [LAID_SHOT], KEPT);
    const shown: unknown[] = [];
    vi.spyOn(Element.prototype, 'scrollIntoView').mockImplementation(function (this: Element) {
      shown.push(this.className);
    });
    press(`More: ${KEPT_DRILL.name}`);
    (await screen.findByRole('button', { name: `Card ${KEPT_DRILL.name}` })).click();
    // What opens under the last row is brought into sight.
    expect(shown).toEqual(['record-actions']);
    vi.restoreAllMocks();
    expect(router.route.value).toEqual({ place: 'kit', panel: `drill/${KEPT_DRILL.id}` });
    router.close();
  });

  it('is counted in the log beside the ladders', async () => {
    const { player, log } = await openLog('#log', [LAID_SHOT], KEPT);
    const row = () => screen.getByRole('button', { name: /^Practice/ }).textContent;
    expect(row()).toMatch(/1 way kept, 2 tries\./);
    const [kept] = log.practice.kept.all.value;
    if (!kept) throw new Error('it is kept');
    log.practice.kept.count(kept, true);
    await expect.poll(row).toMatch(/1 way kept, 3 tries\./);
    expect(player.played.value).toHaveLength(1);
  });

  it('is renamed, deleted and put back as in other lists, and is no position of Choose', async () => {
    const { choose } = await openLog('#log/practice', [LAID_SHOT], KEPT);
    const [name, other] = [KEPT_DRILL.name, 'My bank'];
    press(`More: ${name}`);
    await screen.findByRole('button', { name: `Rename ${name}` });
    expect(choose.rename(KEPT_DRILL.id, other).ok).toBe(true);
    await screen.findByRole('button', { name: `Delete ${other}` });
    press(`Delete ${other}`);
    await expect.poll(() => text('.undo-delete')).toContain('My bank is deleted.');
    press(/Put it back/);
    await screen.findByRole('button', { name: /^My bank/ });
    expect(choose.saved.value.map(({ id }) => id)).toEqual([CUT.id]);
  });

  it('is no longer kept, says the address of one that was deleted', async () => {
    await openLog('#log/practice/gone', [LAID_SHOT]);
    expect(text('main')).toContain('no longer kept');
  });
});
