import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { type OpenApp, openApp, untilRendered } from '../harness/open-app';
import { untilAssessed } from '../harness/read-room';
import { readTile, settle } from '../harness/read-shot';
import { tapButton } from '../harness/thumb';
import { createFinger, type Finger } from '../harness/touch';

let app: OpenApp;
let finger: Finger;
beforeAll(async () => {
  app = await openApp();
  finger = await createFinger(app.page);
});
afterAll(async () => {
  expect(app.guard.problems).toEqual([]);
  await app.close();
});

const tile = (name: string) => readTile(app.page, name);
const picture = () => app.page.locator('.shooter-diagram svg');
const strip = () => app.page.locator('.overhead-drawing svg');
const number = async (selector: string, name: string) =>
  Number(await app.page.locator(selector).first().getAttribute(name));

/** Puts the finger on a place of a drawing, px from its corner. */
async function downAt(drawing: ReturnType<typeof picture>, x: number, y: number): Promise<void> {
  const box = await drawing.boundingBox();
  if (!box) throw new Error('there is no drawing');
  await finger.down(drawing, x / box.width, y / box.height);
}

/** The worked example anew. */
beforeEach(async () => {
  await app.page.goto(`${app.server.url}#shot`);
  await untilRendered(app.page);
  const undo = app.page.getByRole('button', { name: 'Undo' });
  while (await undo.isEnabled()) await tapButton(app.page, 'Undo');
  await untilAssessed(app.page);
});

describe('dragged on the picture', () => {
  it('the ghost ball changes the cut, through straight to the other side, as one step', async () => {
    const before = await tile('cut');
    const ghost = { x: await number('.ghost-ball', 'cx'), y: await number('.ghost-ball', 'cy') };
    const r = await number('.shooter-diagram .object-ball', 'r');
    const object = await number('.shooter-diagram .object-ball', 'cx');
    await downAt(picture(), ghost.x, ghost.y);
    // To half a ball right of the object ball: a half-ball hit, 30° to the left.
    await finger.move(object + r - ghost.x, 0);
    await finger.up();
    await settle(app.page);
    expect(await tile('cut')).toMatch(/^Cut ?30° ?left/);
    const radius = await number('.shooter-diagram .object-ball', 'r');
    expect((await number('.ghost-ball', 'cx')) - object).toBeCloseTo(radius, 6);
    await tapButton(app.page, 'Undo');
    await expect.poll(() => tile('cut')).toBe(before);
    await tapButton(app.page, 'Redo');
    await expect.poll(() => tile('cut')).toMatch(/30°/);
  });

  it('keeps its height under the finger, in however many lines the answer is told', async () => {
    await downAt(picture(), await number('.ghost-ball', 'cx'), await number('.ghost-ball', 'cy'));
    const [heights, leads] = [new Set<number>(), new Set<string>()];
    await finger.move(20, 0);
    for (let step = 0; step < 24; step++) {
      await finger.move(-2, 0);
      await settle(app.page);
      heights.add(await number('.shooter-diagram svg', 'height'));
      leads.add((await app.page.locator('.answer-lead').textContent()) ?? '');
    }
    await finger.up();
    expect([...leads].join()).toMatch(/just (in|out)side[^,]*of the object ball/);
    expect(heights.size).toBe(1);
  });

  it('the tip changes side and height, held to the miscue limit', async () => {
    const tip = { x: await number('.near-tip', 'cx'), y: await number('.near-tip', 'cy') };
    const ball = await number('.near-ball', 'r');
    const before = { cx: await number('.near-ball', 'cx'), r: ball };
    await downAt(picture(), tip.x, tip.y);
    await finger.move(before.cx - tip.x, ball * 1.5);
    // Nothing moves under the finger, whatever is to be warned of.
    expect(await number('.near-ball', 'r')).toBe(before.r);
    await finger.up();
    await untilAssessed(app.page);
    const limit = await number('.near-limit', 'r');
    const [cx, cy] = [await number('.near-ball', 'cx'), await number('.near-ball', 'cy')];
    expect(await tile('tip')).toMatch(/low/);
    const now = { x: await number('.near-tip', 'cx'), y: await number('.near-tip', 'cy') };
    // The dome puts the tip's middle a third farther out than the contact.
    const out = Math.hypot(now.x - cx, now.y - cy) / (1 + 0.0095 / 0.028575);
    expect(out).toBeLessThanOrEqual(limit + 0.1);
    expect(out).toBeGreaterThan(limit * 0.9);
    expect(now.y).toBeGreaterThan(cy);
    await tapButton(app.page, 'Undo');
    await expect.poll(() => tile('tip')).not.toMatch(/low/);
  });

  it('the cue ball on the strip changes the distance on the strip’s one scale', async () => {
    const cue = { x: await number('.overhead-drawing .cue-ball', 'cx'), y: 0 };
    cue.y = await number('.overhead-drawing .cue-ball', 'cy');
    const ghost = await number('.overhead-drawing .ghost-ball', 'cx');
    // Twice as far as the 0.70 m it lay.
    await downAt(strip(), cue.x, cue.y);
    await finger.move(-(ghost - cue.x), 0);
    await finger.up();
    await settle(app.page);
    const distance = Number(/[\d.]+/.exec(await tile('distance'))?.[0]);
    expect(distance).toBeCloseTo(1.4, 1);
    expect(await number('.overhead-drawing .ghost-ball', 'cx')).toBe(ghost);
    await tapButton(app.page, 'Undo');
    await expect.poll(() => tile('distance')).toContain('0.70');
  });

  it('the run on the strip changes the speed, and nothing is saved while the finger is down', async () => {
    const before = await tile('speed');
    const x = await number('.run-way', 'x2');
    const y = await number('.run-way', 'y1');
    const kept = await keptSpeed();
    await downAt(strip(), x, y);
    await finger.move(60, 0);
    await expect.poll(() => tile('speed')).not.toBe(before);
    const faster = await tile('speed');
    expect(Number(/[\d.]+/.exec(faster)?.[0])).toBeGreaterThan(1.8);
    expect(await app.page.locator('.run-way').getAttribute('x2')).not.toBe(`${x}`);
    expect(await keptSpeed()).toBe(kept);
    await finger.up();
    await expect.poll(keptSpeed).toBeGreaterThan(kept);
    expect(await tile('speed')).toBe(faster);
  });

  it.each([
    ['the ghost ball', picture, '.ghost-ball', 'cut'],
    ['the tip', picture, '.near-tip', 'tip'],
    ['the cue ball', strip, '.overhead-drawing .cue-ball', 'distance'],
  ] as const)(
    '%s is as before once the phone takes the finger away',
    async (_, drawing, at, name) => {
      const before = await tile(name);
      await downAt(drawing(), await number(at, 'cx'), await number(at, 'cy'));
      await finger.move(25, 0);
      await expect.poll(() => tile(name)).not.toBe(before);
      await finger.takenAway();
      await expect.poll(() => tile(name)).toBe(before);
      expect(await app.page.getByRole('button', { name: 'Undo' }).isEnabled()).toBe(false);
    },
  );
});

/** The speed of the shot in the database, m/s. */
async function keptSpeed(): Promise<number> {
  return app.page.evaluate(async () => {
    const database = await new Promise<IDBDatabase>((resolve, reject) => {
      const opening = indexedDB.open('leeway');
      opening.onsuccess = () => resolve(opening.result);
      opening.onerror = () => reject(opening.error);
    });
    const row = await new Promise<{ shot: { speedMps: number } } | undefined>((resolve) => {
      const asked = database.transaction('desk').objectStore('desk').get('current');
      asked.onsuccess = () => resolve(asked.result);
    });
    database.close();
    return row?.shot.speedMps ?? 1.8;
  });
}

const line = () => app.page.locator('.part-line').textContent();

describe('what is what', () => {
  it('is said by a tap on it, which moves nothing, and goes with the next tap elsewhere', async () => {
    const cut = await tile('cut');
    const x = await number('.aim-mark line', 'x1');
    const y = await number('.shooter-diagram .object-ball', 'cy');
    await downAt(picture(), x, y);
    await finger.up();
    await expect.poll(line).toMatch(/^Aim line: /);
    const told = new Set<string>();
    while ((await line()) !== '') {
      told.add((await line()) ?? '');
      await downAt(picture(), x, y);
      await finger.up();
      await settle(app.page);
    }
    // Taps on the same place go through all that lies there.
    expect([...told].join(' ')).toMatch(/Goes: .*How sure: /);
    expect(await tile('cut')).toBe(cut);
    expect(await app.page.getByRole('button', { name: 'Undo' }).isEnabled()).toBe(false);
  });

  it('is gone through part by part with a key', async () => {
    const button = app.page.getByRole('button', { name: 'What is what in the picture' });
    await button.focus();
    const told: string[] = [];
    for (;;) {
      await app.page.keyboard.press('Enter');
      await settle(app.page);
      const said = (await line()) ?? '';
      if (said === '') break;
      told.push(said.split(/[:,]/)[0] ?? '');
    }
    expect(told).toEqual([
      'Object ball',
      'Ghost ball',
      'Aim line',
      'Cue',
      'Goes',
      'How sure',
      'Cue ball',
      'Tip',
      'Dashed ring',
    ]);
  });

  it('shows the held shot’s lines, and names them', async () => {
    expect(await app.page.locator('.held-lines').count()).toBe(0);
    await tapButton(app.page, 'Hold');
    await expect.poll(() => app.page.locator('.held-lines line').count()).toBe(4);
    await settle(app.page);
    const held = await number('.held-lines .held-aim', 'x1');
    expect(held).toBeCloseTo(await number('.aim-mark line', 'x1'), 6);
    await tapButton(app.page, 'Let go');
  });
});
