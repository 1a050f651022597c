import { cleanup, fireEvent, screen } from '@testing-library/preact';
import { afterEach, describe, expect, it } from 'vitest';
import { parsePlayed } from '../../../../src/store/parse-played';
import { LAID_SHOT } from '../../../store/invented-players';
import { openLog, press } from './open-log';

afterEach(cleanup);

const switchNow = () => screen.getByRole('switch', { name: /Scratched/ });
const pressed = () =>
  [...document.querySelectorAll('.result-buttons [aria-pressed="true"]')].map(({ textContent }) =>
    textContent?.trim(),
  );

describe('after a shot on Shot', () => {
  it('is logged by one tap on what became of it, as it was asked, and taken back by another', async () => {
    const { player, shot, desk } = await openLog('#shot/after');
    press('Too thin');
    await expect.poll(pressed).toEqual(['Too thin']);
    const [logged] = player.played.value;
    if (logged === undefined) throw new Error('it is logged');
    const { headingRad: _, ...asked } = shot.shot.value;
    expect(logged).toMatchObject({
      shot: asked,
      target: { kind: 'mouth', ...desk.pocket.value },
      aimRad: shot.lastAnswer.value?.answer.aimRad,
      position: null,
      result: 'thin',
      scratched: false,
      asMeant: true,
      testId: null,
    });
    expect(parsePlayed(logged)).toEqual({ ok: true, record: logged, repairs: [] });
    press(/Undo/);
    await expect.poll(pressed).toEqual([]);
    expect(player.played.value).toEqual([]);
  });

  it('is logged again by Same again, the first kept as it was, and undone one by one', async () => {
    const { player } = await openLog('#shot/after');
    switchNow().click();
    press('Went');
    await expect.poll(() => screen.queryByRole('button', { name: 'Same again' })).toBeTruthy();
    await screen.findByText('1 logged. Tap another result to put it right.');
    press('Same again');
    await screen.findByText('1 logged. Now tap how the next went.');
    await expect.poll(pressed).toEqual([]);
    press('Too full');
    await screen.findByText(/^2 logged/);
    const told = () => player.played.value.map(({ result, scratched }) => [result, scratched]);
    expect(told()).toEqual([
      ['went', true],
      ['full', false],
    ]);
    press(/Undo/);
    await screen.findByText(/^1 logged/);
    expect(told()).toEqual([['went', true]]);
    press('Too thin');
    await screen.findByText(/^2 logged/);
    expect(told().map(([result]) => result)).toEqual(['went', 'thin']);
  });

  it('asks for left and right where it is straight', async () => {
    const { player, desk } = await openLog('#shot/after');
    desk.setShot({ ...desk.shot.value, cutRad: 0.03 });
    await expect.poll(() => screen.queryByRole('button', { name: 'Too thin' })).toBeNull();
    press('Passed left');
    expect(player.played.value[0]?.result).toBe('left');
  });

  it('takes a scratch before or after, another result, and that it was not as meant', async () => {
    const { player } = await openLog('#shot/after');
    switchNow().click();
    press('Went');
    await expect.poll(() => switchNow().getAttribute('aria-checked')).toBe('true');
    const only = () => {
      expect(player.played.value).toHaveLength(1);
      return player.played.value[0];
    };
    expect(only()).toMatchObject({ result: 'went', scratched: true });
    switchNow().click();
    press('Did not get there');
    press('Not as meant');
    await expect.poll(only).toMatchObject({ result: 'short', scratched: false, asMeant: false });
    await expect
      .poll(() => document.querySelector('.undo-delete')?.textContent)
      .toMatch(/^Logged: did not get there, not as meant/);
  });

  it('says how to have where the cue ball stopped, where the shot lies on no table', async () => {
    await openLog('#shot/after');
    expect(screen.queryByText(/laid out on Choose/)).toBeNull();
    press('Went');
    await screen.findByText(/Where the cue ball stopped can be said of shots laid out on Choose/);
    expect(screen.queryByRole('button', { name: 'Where it stopped' })).toBeNull();
  });

  it('takes where the cue ball stopped by keys and by a tap, kept on the bed', async () => {
    const laid = { ...LAID_SHOT, cueBall: null };
    const { player } = await openLog(`#log/shots/${laid.id}`, [laid]);
    press('Where it stopped');
    const table = await screen.findByRole('slider', { name: 'Where the cue ball stopped' });
    const stopped = () => player.played.value[0]?.cueBall;
    fireEvent.keyDown(table, { key: 'ArrowUp' });
    const { lengthM, widthM } = laid.position ?? { lengthM: 0, widthM: 0 };
    const { ballRadiusM } = laid.kit;
    // The table lies on its side here: up is left, seen from the break end.
    expect(stopped()).toEqual({ x: -lengthM / 32, y: 0 });
    await expect
      .poll(() => table.getAttribute('aria-valuetext'))
      .toMatch(/4\.0 diamonds along, 1\.8/);
    const numbers = [...table.querySelectorAll('.stopped-number')].map((one) => one.textContent);
    const objects = laid.position?.balls.filter(({ name }) => name !== 'cue') ?? [];
    expect(numbers).toEqual(objects.map(({ name }) => `${name}`));
    const cue = laid.position?.balls.filter(({ name }) => name === 'cue') ?? [];
    expect(table.querySelectorAll('.plain-dot')).toHaveLength(cue.length);
    const drawing = table.querySelector('svg');
    if (drawing === null) throw new Error('there is a drawing');
    fireEvent.pointerUp(drawing, { clientX: 5000, clientY: 0 });
    expect(stopped()?.y).toBeCloseTo(lengthM / 2 - ballRadiusM, 9);
    expect(stopped()?.x).toBeCloseTo(-(widthM / 2 - ballRadiusM), 9);
    press('Take it off');
    expect(stopped()).toBeNull();
  });

  it('has nothing to log where no aim does it', async () => {
    const { player } = await openLog('#shot/after');
    expect(screen.queryByRole('button', { name: 'Went' })).toBeTruthy();
    const { desk } = await openLog('#shot/after');
    desk.setShot({ ...desk.shot.value, speedMps: 0.05 });
    await expect.poll(() => screen.queryByRole('button', { name: 'Went' })).toBeNull();
    expect(player.played.value).toEqual([]);
  });
});

describe('after a way of Choose', () => {
  async function openWay() {
    const opened = await openLog('#choose/ways');
    opened.choose.compare();
    await expect.poll(() => opened.choose.comparison.value.state).toBe('done');
    const [way] = opened.choose.comparison.value.ways;
    if (way === undefined) throw new Error('there is a way');
    opened.choose.choose(way);
    return { ...opened, way };
  }

  it('is logged with where the balls lay, again and again while they lie so', async () => {
    const { player, choose, router, way, rest } = await openWay();
    await expect.poll(() => screen.queryByRole('button', { name: 'Log how it went' })).toBeTruthy();
    press('Log how it went');
    await expect.poll(() => router.route.value.panel).toBe('ways/after');
    await expect.poll(() => screen.queryByRole('button', { name: 'Too full' })).toBeTruthy();
    press('Too full');
    const [logged] = player.played.value;
    if (logged === undefined) throw new Error('it is logged');
    const { balls, goal } = choose.open.value;
    expect(logged).toMatchObject({ aimRad: way.option.stroke.aimRad, position: { balls, goal } });
    expect(parsePlayed(logged)).toEqual({ ok: true, record: logged, repairs: [] });
    await rest();
    // Whoever plays is learnt from that, which puts the ways in the past, and not the shot.
    expect(choose.comparison.value.isStale).toBe(true);
    expect(choose.toLog.value).not.toBeNull();
    router.open('ways');
    const aim = await screen.findByRole<HTMLButtonElement>('button', { name: 'Aim it' });
    expect(aim.disabled).toBe(false);
    expect(document.querySelector('.way-figure')?.classList.contains('is-old')).toBe(true);
    expect(document.querySelector('.way-head.is-stale')).toBeNull();
    choose.nudge('cue', 0.02, 0);
    expect(choose.toLog.value).toBeNull();
  });

  it('keeps where the balls lay on Shot too, until the shot is another', async () => {
    const { choose, log, shot } = await openWay();
    expect(log.askShot()?.position).toBeNull();
    choose.sendToShot();
    const { balls, goal } = choose.open.value;
    expect(log.askShot()?.position).toMatchObject({ balls, goal });
    shot.nudge('speed', 1);
    expect(log.askShot()?.position?.stroke.speedMps).toBe(shot.shot.value.speedMps);
    choose.nudge('cue', 0.02, 0);
    expect(log.askShot()?.position).toBeNull();
    choose.undo();
    expect(log.askShot()?.position).not.toBeNull();
    shot.nudge('cut', 1);
    expect(log.askShot()?.position).toBeNull();
  });
});
