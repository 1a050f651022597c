import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { AimAnswer, Shot } from '../../src/engine/direct/shot';
import { solveAim } from '../../src/engine/direct/solve-aim';
import { DEFAULT_KIT } from '../../src/engine/kit/kit';
import { DEFAULT_SHOT } from '../../src/store/default-desk';
import { radOf } from '../../src/units/angle-degrees';
import { type OpenApp, openApp, untilRendered } from '../harness/open-app';
import { readAnswer, readTiles } from '../harness/read-shot';
import { openTile, tapButton } from '../harness/thumb';

function answered(shot: Shot): AimAnswer {
  const result = solveAim(shot, DEFAULT_KIT);
  if (!result.ok) throw new Error(`the engine refuses: ${result.reason}`);
  return result;
}

/** A length in m as the app shows it: whole millimetres and a side. */
function shown(lengthM: number): string {
  const mm = Math.round(Math.abs(lengthM) * 1000);
  return mm === 0 ? '0 mm' : `${mm} mm ${lengthM < 0 ? 'left' : 'right'}`;
}

describe('a shot given by thumb alone', () => {
  let app: OpenApp;
  beforeAll(async () => {
    app = await openApp({ hasWorkers: false });
  });
  afterAll(() => app.close());

  it('opens with the worked example and its answer', async () => {
    const answer = answered(DEFAULT_SHOT);
    const { ghost, centre, stick } = await readAnswer(app.page);
    expect(ghost).toBe(shown(answer.aimOffsetM));
    expect(centre).toBe(shown(answer.aimOnObjectBallM));
    expect(stick).toBe(shown(answer.stickOnObjectBallM));
  });

  it('gets the engine’s own answer', async () => {
    const { page } = app;
    await openTile(page, 'cut');
    for (let i = 0; i < 5; i++) await tapButton(page, 'Thinner');
    await tapButton(page, /goes left/);
    await openTile(page, 'speed');
    await tapButton(page, 'firm');
    await openTile(page, 'tip');
    await tapButton(page, 'Tip right');
    await tapButton(page, 'Tip right');
    await tapButton(page, 'Tip down');
    await openTile(page, 'raised');
    await tapButton(page, '15°');
    await openTile(page, 'distance');
    await tapButton(page, '1.50');
    await tapButton(page, 'Nearer');
    await tapButton(page, 'Close');

    const shot: Shot = {
      distanceM: 1.49,
      cutRad: radOf(-29),
      // An eighth of a tip each: 13 mm of the axis, of which ball and dome make 38.075 a radius.
      side: (-0.125 * 13) / 38.075,
      height: (-0.125 * 13) / 38.075,
      elevationRad: radOf(15),
      speedMps: 2.5,
    };
    const answer = answered(shot);
    const read = await readAnswer(page);
    expect(read.ghost).toBe(shown(answer.aimOffsetM));
    expect(read.centre).toBe(shown(answer.aimOnObjectBallM));
    expect(read.stick).toBe(shown(answer.stickOnObjectBallM));
    expect(read.ghost).not.toBe(shown(answered(DEFAULT_SHOT).aimOffsetM));
  });

  it('is still there after a reload', async () => {
    const { page } = app;
    const before = { tiles: await readTiles(page), answer: await readAnswer(page) };
    expect(before.tiles.distance).toContain('1.49');
    await page.reload();
    await untilRendered(page);
    expect({ tiles: await readTiles(page), answer: await readAnswer(page) }).toEqual(before);
  });

  it('is taken back step by step', async () => {
    const { page } = app;
    await openTile(page, 'speed');
    await tapButton(page, 'soft');
    expect((await readTiles(page)).speed).toContain('0.75');
    await tapButton(page, /Undo/);
    expect((await readTiles(page)).speed).toContain('2.5');
  });

  it('can be put aside, compared and taken up again', async () => {
    const { page } = app;
    const first = await readAnswer(page);
    await tapButton(page, 'Hold');
    await tapButton(page, 'touch');
    await tapButton(page, 'medium');
    const second = await readAnswer(page);
    expect(second).not.toEqual(first);
    const line = page.locator('.comparison-line');
    expect(await line.textContent()).toContain(first.centre.replace(/ (left|right)/, ''));
    await tapButton(page, /^.*Held/);
    expect(await readAnswer(page)).toEqual(first);
    await tapButton(page, 'Let go');
    expect(await line.count()).toBe(0);
  });

  it('placed on the cue ball’s face snaps to a marked contact', async () => {
    const { page } = app;
    await openTile(page, 'tip');
    const box = await page.locator('.tip-face').boundingBox();
    if (!box) throw new Error('there is no face');
    const radiusPx = box.width * 0.48;
    await page.touchscreen.tap(
      box.x + box.width / 2 + radiusPx * 0.19,
      box.y + box.height / 2 - radiusPx * 0.02,
    );
    const side = page.getByRole('textbox', { name: /^Side/ });
    // Half a tip is 6.5 of the axis's 38.075 mm in a radius: 0.171 of it.
    await expect.poll(() => side.inputValue()).toBe('½ right');
  });

  it('leaves nothing wrong behind', () => {
    expect(app.guard.problems).toEqual([]);
  });
});
