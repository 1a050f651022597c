import { cleanup, fireEvent, screen } from '@testing-library/preact';
import { afterEach, describe, expect, it } from 'vitest';
import { directCut } from '../../../../src/engine/goal/goal';
import { CUT, EMPTY } from './invented-choose';
import { openChoose, press } from './open-choose';

afterEach(cleanup);

describe('laying balls by buttons', () => {
  it('takes a ball up and puts it down, without a drag', async () => {
    const { choose } = openChoose('#choose', EMPTY);
    press('cue ball');
    await expect.poll(() => screen.queryByRole('button', { name: 'Put down' })).toBeTruthy();
    press('Put down');
    expect(choose.open.value.balls).toEqual([{ name: 'cue', xM: 0, yM: 0 }]);
    await expect
      .poll(() => screen.queryByRole('button', { name: 'cue ball, on the table' }))
      .toBeTruthy();
  });

  it('says what to do next and where the selected ball lies', async () => {
    const { container } = openChoose('#choose', EMPTY);
    const line = () => container.querySelector('.status-line p')?.textContent;
    expect(line()).toBe('Pick a ball below, then tap the table.');
    press('5 ball');
    await expect.poll(line).toBe('Tap the table to put the 5 ball down.');
    press('Put down');
    // The middle of the table: four diamonds along and two across.
    await expect.poll(line).toBe('5 ball: 4.0 diamonds along, 2.0 from the left.');
  });

  it('tells at the pockets how often the selected ball goes in, and of none where none is selected', async () => {
    const { choose, container, rest } = openChoose('#choose', CUT);
    rest();
    expect(container.querySelector('.pocket-marks')).toBeNull();
    choose.select(8);
    rest();
    await expect.poll(() => container.querySelector('.pocket-marks')).toBeTruthy();
    const label = () => container.querySelector('svg[role="img"]')?.getAttribute('aria-label');
    expect(choose.open.value.goal.ball).toBe(3);
    await expect.poll(label).toMatch(/\. (Near|Middle|Far) (left|right) pocket \d in 10/);
    choose.select(null);
    await expect.poll(() => container.querySelector('.pocket-marks')).toBeNull();
  });

  it('says first what the selected ball touches', async () => {
    const { choose, container } = openChoose();
    choose.select(11);
    await expect
      .poll(() => container.querySelector('.status-line p')?.textContent)
      .toMatch(/^11 ball: frozen to the 12; \d/);
  });

  it('greys the arrows while there is nothing to move', async () => {
    const { choose } = openChoose();
    const isGrey = () => screen.getByRole('button', { name: 'Move ball up' }).matches(':disabled');
    expect(isGrey()).toBe(true);
    choose.select(8);
    await expect.poll(isGrey).toBe(false);
    choose.takeOff(8);
    await expect.poll(isGrey).toBe(true);
  });

  it('lets go of the selected ball when Balls is left', async () => {
    const { choose, router } = openChoose();
    choose.select(8);
    router.open('play');
    await expect.poll(() => choose.selected.value).toBeNull();
  });

  it('draws every number above every ball', () => {
    const { container } = openChoose();
    const marks = [...container.querySelectorAll('.ball-body, .ball-number')];
    const lastDisc = marks.findLastIndex((mark) => mark.matches('.ball-body'));
    const firstNumber = marks.findIndex((mark) => mark.matches('.ball-number'));
    expect(firstNumber).toBeGreaterThan(lastDisc);
    expect(container.querySelectorAll('.frozen-bar')).toHaveLength(1);
  });

  it('freezes the selected ball and takes it off', async () => {
    const { choose } = openChoose();
    choose.select(8);
    await expect.poll(() => screen.getByRole('button', { name: 'Freeze' })).not.toBeNull();
    await expect
      .poll(() => screen.getByRole('button', { name: 'Freeze' }).hasAttribute('disabled'))
      .toBe(false);
    press('Freeze');
    expect(choose.neighbours.value[0]).toMatchObject({ what: 'cushion', isFrozen: true });
    press('Take off');
    expect(choose.ballAt(8)).toBeNull();
  });

  it('undoes and redoes', async () => {
    const { choose } = openChoose();
    choose.takeOff(8);
    await expect
      .poll(() => screen.getByRole('button', { name: 'Undo' }).hasAttribute('disabled'))
      .toBe(false);
    press('Undo');
    expect(choose.ballAt(8)).not.toBeNull();
    await expect
      .poll(() => screen.getByRole('button', { name: 'Redo' }).hasAttribute('disabled'))
      .toBe(false);
    press('Redo');
    expect(choose.ballAt(8)).toBeNull();
  });
});

describe('laying balls by keys', () => {
  const key = (init: KeyboardEventInit) => fireEvent.keyDown(screen.getByRole('main'), init);

  it('moves the selected ball a centimetre, with Shift a millimetre', () => {
    const { choose } = openChoose();
    choose.select(8);
    const before = choose.ballAt(8);
    // Without a screen to measure the table lies, its break end on the left.
    key({ key: 'ArrowLeft' });
    expect((before?.yM ?? 0) - (choose.ballAt(8)?.yM ?? 0)).toBeCloseTo(0.01, 12);
    key({ key: 'ArrowUp', shiftKey: true });
    expect((before?.xM ?? 0) - (choose.ballAt(8)?.xM ?? 0)).toBeCloseTo(0.001, 12);
  });

  it('takes it off with Delete and takes that back with Ctrl+Z', () => {
    const { choose } = openChoose();
    choose.select(8);
    key({ key: 'Delete' });
    expect(choose.ballAt(8)).toBeNull();
    key({ key: 'z', ctrlKey: true });
    expect(choose.ballAt(8)).not.toBeNull();
  });

  it('leaves arrows to the browser while nothing is selected', () => {
    openChoose();
    expect(key({ key: 'ArrowDown' })).toBe(true);
  });
});

describe('choosing what to play', () => {
  it('takes ball and pocket by buttons', async () => {
    const { choose, container } = openChoose('#choose/play');
    press('8 ball');
    await expect.poll(() => choose.closed.value.has('near-right')).toBe(false);
    press('Into the near right pocket');
    expect(choose.open.value.goal).toEqual(directCut(8, 'near-right'));
    await expect
      .poll(() => container.querySelector('.status-line p')?.textContent)
      .toMatch(/^The 8 into the near right pocket: cut/);
  });

  it('marks the pockets that the ball cannot go into, and still takes them', async () => {
    const { choose, container } = openChoose('#choose/play');
    expect(choose.closed.value.get('near-left')).toBe('too-thin');
    const marked = () => container.querySelectorAll('.board-hole.is-closed').length;
    await expect.poll(marked).toBe(choose.closed.value.size);
    press('Into the near left pocket, too thin');
    expect(choose.open.value.goal.pocket).toBe('near-left');
  });

  it('marks the side pocket that a ball along the rail cannot fall into', () => {
    const balls = [
      { name: 'cue', xM: 0.5, yM: 1.1 },
      { name: 3, xM: 0.6, yM: 0.9 },
    ] as const;
    openChoose('#choose/play', { ...CUT, balls });
    expect(screen.queryByRole('button', { name: /middle right pocket, no way in/ })).not.toBeNull();
  });

  it('lists the pockets as the table lies: here the break end is on the left', () => {
    const { container } = openChoose('#choose/play');
    const names = [...container.querySelectorAll('.pocket-name')].map((one) => one.textContent);
    expect(names.join()).toBe('near left,middle left,far left,near right,middle right,far right');
  });

  it.each(['#choose/play', '#choose/ways'])('leads from an empty table at %s to Balls', (hash) => {
    openChoose(hash, EMPTY);
    press('Put the balls down');
    expect(location.hash).toBe('#choose');
  });

  it('leads from Play to all ways where no one shot is chosen', async () => {
    const { choose } = openChoose('#choose/play');
    const onward = () => screen.queryByRole('button', { name: 'See all ways to play it' });
    expect(onward()).toBeNull();
    choose.playInto(null);
    await expect.poll(onward).toBeTruthy();
    press('See all ways to play it');
    expect(location.hash).toBe('#choose/ways');
  });

  it('asks for a ball first, and tells of every pocket how often it goes, before one is chosen', async () => {
    const { choose, container, rest } = openChoose('#choose/play', {
      ...CUT,
      goal: { ...CUT.goal, ball: null, pocket: null },
    });
    expect(container.querySelector('.status-line p')?.textContent).toMatch(/^Tap the ball to play/);
    expect(container.querySelector('.pocket-marks')).toBeNull();
    press('8 ball');
    await expect.poll(() => choose.open.value.goal.ball).toBe(8);
    rest();
    // The invented chances: 10 % of the first pocket, 30 % of the second, and so on.
    const names = choose.shape.value.pockets.map(({ name }) => name.replace('-', ' '));
    const open = names.findIndex(
      (name) => !choose.closed.value.has(name.replace(' ', '-') as never),
    );
    const words = `${[1, 3, 5, 7, 9, 1][open]} in 10`;
    const button = () =>
      screen.queryByRole('button', { name: `Into the ${names[open]} pocket, ${words}` });
    await expect.poll(button).toBeTruthy();
    const drawn = [...container.querySelectorAll('.pocket-marks text')].map(
      (one) => one.textContent,
    );
    expect(drawn).toContain(words);
    expect(container.querySelectorAll('.pocket-cross').length).toBe(choose.closed.value.size);
    button()?.click();
    expect(choose.open.value.goal.pocket).toBe(names[open]?.replace(' ', '-'));
  });

  it('leads on to the ways once there is a shot, and says how far they are', async () => {
    const { rest } = openChoose('#choose/play');
    const onward = (name: string) => screen.queryByRole('button', { name });
    expect(onward('See the ways to play it')).not.toBeNull();
    rest();
    await expect.poll(() => onward('See the 9 ways to play it')).toBeTruthy();
    press('See the 9 ways to play it');
    expect(location.hash).toBe('#choose/ways');
  });

  it('tells in words what is in the way', async () => {
    const between = { name: 9, xM: 0.35, yM: 0.8 };
    const { container } = openChoose('#choose/play', { ...CUT, balls: [...CUT.balls, between] });
    await expect
      .poll(() => container.querySelector('.hindrances')?.textContent)
      .toContain('The 9 is in the way of the 3.');
    expect(container.querySelector('.in-the-way text')?.textContent).toBe('in the way');
  });

  it('tells in one line why there is no shot, and greys the last', async () => {
    const { choose, container } = openChoose('#choose/play');
    choose.playInto('near-left');
    await expect
      .poll(() => container.querySelector('.status-line p')?.textContent)
      .toBe('⚠ The cut is over 87°: no direct shot sends it that way.');
    expect(container.querySelector('.shot-overlay')?.getAttribute('class')).toContain('is-old');
  });
});

describe('the zone', () => {
  it('is drawn on the bed alone', () => {
    const { container } = openChoose('#choose/zone', CUT);
    const clip = container.querySelector('.zone-mark')?.getAttribute('clip-path');
    const id = /^url\(#(.+)\)$/.exec(clip ?? '')?.[1] ?? 'none';
    expect(container.querySelector(`clipPath#${id} path`)?.getAttribute('d')).toBe(
      container.querySelector('.board-bed')?.getAttribute('d'),
    );
  });

  it('is put, sized, moved and taken away by buttons', async () => {
    const { choose } = openChoose('#choose/zone', EMPTY);
    press('Put a zone in the middle');
    expect(choose.open.value.zone).toEqual({ xM: 0, yM: 0, radiusM: 0.25 });
    await expect.poll(() => screen.queryByRole('button', { name: 'Larger' })).toBeTruthy();
    press('Larger');
    expect(choose.open.value.zone?.radiusM).toBeCloseTo(0.3, 12);
    press('Move zone right');
    // The table lies, its break end on the left.
    expect(choose.open.value.zone?.yM).toBeCloseTo(0.005, 12);
    press('No zone');
    expect(choose.open.value.zone).toBeNull();
  });
});
