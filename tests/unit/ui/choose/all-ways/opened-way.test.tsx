import { cleanup, screen } from '@testing-library/preact';
import { afterEach, describe, expect, it } from 'vitest';
import { press } from '../open-choose';
import { look, openDone, openFolded, rowOf, rows, strokeOf, text } from './open-all-ways';

afterEach(cleanup);

describe('a way that is opened', () => {
  it('is kept as laid, with all that happens on the way, while the balls lie so', async () => {
    const { choose } = await look('bank');
    const told = choose.all.chosen.value?.told;
    press('Keep');
    await expect.poll(() => choose.drills.value.length).toBe(1);
    const [kept] = choose.drills.value;
    expect(kept?.drill).toMatchObject({ kind: 'bank', via: told?.goal.via });
    expect(kept?.drill?.stroke.aimRad).toBeCloseTo(
      (told?.headingRad ?? 0) + (strokeOf(choose.all.chosen.value)?.aimRad ?? 0),
      12,
    );
    expect(kept?.name).toBe('3 far right, bank off the left rail');
    await screen.findByRole('button', { name: '✓ Kept: practise' });
    choose.remove(kept?.id ?? '');
    choose.nudge('cue', 0.05, 0);
    await expect.poll(() => screen.queryByRole('button', { name: 'Keep' })).toBeNull();
    expect(choose.keepDrill('Too late').ok).toBe(false);
  });

  it('says that it is kept when it is come back to, and is kept once', async () => {
    const { choose } = await look('bank');
    press('Keep');
    const isKept = () => screen.queryByRole('button', { name: '✓ Kept: practise' }) !== null;
    await expect.poll(isKept).toBe(true);
    const [kept] = choose.drills.value;
    press(/All ways/);
    await expect.poll(isKept).toBe(false);
    rowOf('kick').click();
    await screen.findByRole('button', { name: 'Keep' });
    press(/All ways/);
    await expect.poll(() => rows().length).toBe(12);
    rowOf('bank').click();
    await expect.poll(isKept).toBe(true);
    expect(choose.keepDrill('Once more')).toEqual({ ok: true, id: kept?.id });
    expect(choose.drills.value).toEqual([kept]);
    // What became of its tries makes no other way of it.
    choose.logTry(kept?.id ?? '', 'player-student', true);
    expect(choose.keptAs.value).toBe(kept?.id);
    choose.nudge('cue', 0.05, 0);
    expect(choose.keptAs.value).toBeNull();
  });

  it('draws the fan and the other balls’ paths, and tells the room for error', async () => {
    const { container } = await look('bank');
    expect(container.querySelectorAll('.fan-path')).toHaveLength(5);
    const lines = [...container.querySelectorAll('.fan-lines li')].map((line) => line.textContent);
    expect(lines[0]).toMatch(/^A true: /);
    const room = lines.slice(5).join('; ');
    expect(room).toMatch(/Line from \d+.* left \(full\) to \d+.* right \(thin\)/);
    expect(room).toMatch(/Speed from [\d.]+ \(full\) to [\d.]+ m\/s \(thin\)/);
    expect(text('.way-reason')).toMatch(/Scratch 1 in 10/);
    await expect
      .poll(() => container.querySelector('.table-board svg')?.getAttribute('aria-label'))
      .toMatch(/The 3 into the far right pocket, bank off the left rail/);
  });

  it('is heard as one sentence, which is what is read aloud', async () => {
    const { choose } = await look('bank');
    const heading = document.querySelector('#chosen-way');
    await expect.poll(() => document.activeElement?.id).toBe('chosen-way');
    expect(heading?.getAttribute('aria-describedby')).toBe('way-sentence');
    expect(text('#way-sentence')).toMatch(
      /^The 3 into the far right pocket, bank off the left rail\. Goes.* Point the cue at the .* rail’s nose, .*[\d½] diamonds? from the .* corner\. No side.* m\/s\. Then the cue ball, in diamonds: /,
    );
    // This browser has no voice.
    expect(choose.all.canSpeak).toBe(false);
    expect(screen.queryByRole('button', { name: 'Read aloud' })).toBeNull();
  });

  it('opens as laid where no straight line is meant: the cue’s line to a point on a rail', async () => {
    const { container, router } = await look('kick');
    press('Aim it');
    expect(location.hash).toBe('#choose/ways/aim');
    await expect.poll(() => container.querySelectorAll('.board-aim').length).toBe(1);
    expect(container.querySelectorAll('.fan-path')).toHaveLength(0);
    // From (−0.28, −0.5) 0.4 rad right of straight up: the right rail, 0.915 m across and up the table.
    const upM = -0.5 + 0.915 / Math.tan(0.4);
    expect(upM).toBeGreaterThan(1.27);
    const alongM = -0.28 + 1.77 * Math.tan(0.4);
    const eighths = Math.round(((0.635 - alongM) / 0.3175) * 8) / 8;
    expect(eighths).toBe(0.5);
    expect(text('.aim-point')).toBe(
      'Point the cue at the far rail’s nose, ½ diamond from the far right corner.',
    );
    expect(screen.queryByRole('button', { name: 'Log how it went' })).toBeNull();
    router.close();
    await expect.poll(() => container.querySelectorAll('.fan-path').length).toBe(5);
  });

  it('fills Shot in where it is a direct cut, which can be logged too', async () => {
    const { choose, shot, router } = await look(', cut ');
    expect(screen.getByRole('button', { name: 'Log how it went' })).toBeTruthy();
    const speedMps = strokeOf(choose.all.chosen.value)?.speedMps;
    press('Aim it');
    expect(router.route.value.place).toBe('shot');
    expect(shot.shot.value.speedMps).toBe(speedMps);
  });

  it('warns of a raised cue', async () => {
    const { choose, container } = await openDone();
    const raised = choose.all.search.value.ways.find(({ told }) => told.way.isRaised);
    if (!raised) throw new Error('one is raised');
    choose.all.choose(raised);
    await expect.poll(() => text('.way-warning')).toMatch(/room’s rules/);
    expect(container.querySelector('#way-sentence')?.textContent).toMatch(/room’s rules/);
  });

  it('gives the list back with the focus where it was', async () => {
    await openFolded();
    const listed = rows().length;
    const row = rowOf('combination');
    const key = row.dataset.way;
    row.click();
    await expect.poll(() => text('#chosen-way')).toContain('combination');
    (document.activeElement as HTMLElement).blur();
    press(/All ways/);
    await expect.poll(() => rows().length).toBe(listed);
    expect((document.activeElement as HTMLElement).dataset.way).toBe(key);
  });

  it('cannot be aimed once balls have moved, and offers to look again', async () => {
    const { choose } = await look('bank');
    choose.nudge('cue', 0.05, 0);
    await expect
      .poll(() => screen.getByRole<HTMLButtonElement>('button', { name: 'Aim it' }).disabled)
      .toBe(true);
    press('Look again');
    await expect.poll(() => choose.all.search.value.state).not.toBe('none');
    expect(choose.all.chosen.value).toBeNull();
  });
});
