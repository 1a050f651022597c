import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type HeldClock, holdClock } from '../harness/held-clock';
import { type OpenApp, openApp, untilRendered } from '../harness/open-app';
import { untilAssessed } from '../harness/read-room';
import { readAnswer, readTile, settle } from '../harness/read-shot';
import { openTile, tapButton } from '../harness/thumb';
import { createFinger, type Finger } from '../harness/touch';
import { tapTable } from '../harness/touch-table';

let app: OpenApp;
let finger: Finger;
/** How long a button is held must not hang on the machine. */
let clock: HeldClock;
beforeAll(async () => {
  app = await openApp();
  finger = await createFinger(app.page, () => clock.frames(2));
});
afterAll(() => app.close());

async function show(screen: string): Promise<void> {
  await app.page.goto(`${app.server.url}#${screen}`);
  await untilRendered(app.page);
  await settle(app.page);
}
const tile = (name: string) => readTile(app.page, name);
const status = async () => (await app.page.locator('.status-line p').textContent()) ?? '';
const tapTimes = async (name: string, times: number) => {
  for (let time = 0; time < times; time++) await tapButton(app.page, name);
};

describe('by taps alone', () => {
  it.each([
    ['distance', ['1.50', 'Nearer', 'Nearer'], '1.48'],
    ['cut', ['½', 'Thinner', /goes left/], '31° left'],
    ['speed', ['firm', 'Softer'], '2.4m/s'],
    ['raised', ['8°', 'Raise the butt'], '8.5°'],
    ['tip', ['Tip to the centre', 'Tip left', 'Tip left', 'Tip up'], /¼tip left⅛ ↑ high/],
  ] as const)('the slider or face of %s comes to a given value', async (input, taps, value) => {
    await show('shot');
    await openTile(app.page, input);
    for (const name of taps) await tapButton(app.page, name);
    await expect.poll(() => tile(input)).toMatch(value);
    await tapButton(app.page, 'Close');
  });

  it('a ball and the cue ball come to a given place', async () => {
    // The table lies on its side, the break end on the left.
    await show('choose');
    for (const [name, up] of [
      ['3 ball', 0.75],
      ['cue ball', 0.25],
    ] as const) {
      await tapButton(app.page, new RegExp(`^${name}`));
      await tapTable(app.page, { up, across: 0.5 });
      // Four half centimetres on a nine-foot table, whose diamonds are 31.75 cm apart.
      await tapTimes('Move ball down', 10);
      await expect
        .poll(status)
        .toMatch(new RegExp(`: ${(up * 8).toFixed(1)} diamonds along, 2.2 from`));
    }
  });

  it('the zone comes to a given place and size', async () => {
    await show('choose/zone');
    const none = app.page.getByRole('button', { name: 'No zone' });
    if (await none.isVisible()) await tapButton(app.page, 'No zone');
    await tapButton(app.page, 'Put a zone in the middle');
    await tapTimes('Move zone right', 10);
    await tapTimes('Larger', 2);
    await expect.poll(status).toBe('Zone: 4.2 diamonds along, 2.0 from the left, 0.70 m across.');
  });
});

/** Whatever a finger can hold: where to find it, where to drag it, and what must be as before. */
const HELD = [
  ['a slider', 'shot/speed', '.value-slider input', [60, 0], () => tile('speed')],
  ['the tip’s face', 'shot/tip', '.tip-face', [25, -20], () => tile('tip')],
  ['a stepper', 'shot/distance', '[aria-label="Farther"]', [0, 0], () => tile('distance')],
  ['a nudge of a ball', 'choose', '[aria-label="Move ball up"]', [0, 0], () => board()],
  ['a ball', 'choose', '.is-selected .ball-body', [40, 20], () => board()],
  [
    'a number of the kit',
    'kit/cues/demo-cue-house',
    '[aria-label$="tip: more"], [aria-label$=": more"]',
    [0, 0],
    () => kitNumbers(),
  ],
] as const;

const board = () =>
  app.page
    .locator('.board-ball')
    .evaluateAll((balls) => balls.map((ball) => ball.getAttribute('transform')).join());
const kitNumbers = async () => {
  const values = await app.page
    .locator('.record-number input')
    .evaluateAll((all) => all.map((one) => (one as HTMLInputElement).value));
  return `${values.join()} ${await app.page.locator('.place-note').first().textContent()}`;
};

describe.each(HELD)('%s', (_, screen, selector, [rightPx, downPx], read) => {
  const target = () => app.page.locator(selector).first();

  beforeAll(async () => {
    await show(screen);
    if (screen === 'choose') await tapButton(app.page, /^3 ball/);
    if (screen === 'choose' && !(await app.page.locator('.is-selected').count())) {
      await tapButton(app.page, /^3 ball/);
    }
  });

  it('is as before once the phone takes the finger away', async () => {
    clock = await holdClock(app.page);
    const before = await read();
    await finger.down(target());
    await finger.move(rightPx, downPx);
    expect(await read()).not.toBe(before);
    await finger.takenAway();
    await clock.letGo();
    await expect.poll(read).toBe(before);
  });
});

it('takes a press back that slides off its button before it is let go', async () => {
  await show('shot');
  await openTile(app.page, 'distance');
  const before = await tile('distance');
  clock = await holdClock(app.page);
  await finger.down(app.page.getByRole('button', { name: 'Farther' }));
  await finger.move(0, -120);
  await finger.up();
  await clock.letGo();
  expect(await tile('distance')).toBe(before);
});

it('says the answer once the hand rests, and does not chatter while a button is held', async () => {
  await show('shot');
  await openTile(app.page, 'distance');
  await tapButton(app.page, '0.25');
  await untilAssessed(app.page);
  clock = await holdClock(app.page);
  await clock.frames(60);
  await app.page.evaluate(() => {
    const heard: string[] = [];
    (window as { heard?: string[] }).heard = heard;
    for (const spoken of document.querySelectorAll('output, [role="status"]')) {
      const observer = new MutationObserver(() => heard.push(spoken.textContent ?? ''));
      observer.observe(spoken, { childList: true, characterData: true, subtree: true });
    }
  });
  const heard = () => app.page.evaluate(() => (window as { heard?: string[] }).heard ?? []);
  await finger.down(app.page.getByRole('button', { name: 'Farther' }));
  await clock.frames(160);
  // Once a second would be too much to follow; while all changes there is nothing to say.
  expect((await heard()).length).toBeLessThanOrEqual(2);
  await clock.letGo();
  await finger.up();
  const answer = await readAnswer(app.page);
  const figure = answer.ghost.replace(/(\d+ mm) (left|right)/, '$1 $2');
  await expect
    .poll(async () => (await heard()).at(-1) ?? '')
    .toContain(`From the ghost: ${figure}`);
  expect((await heard()).length).toBeLessThanOrEqual(4);
});

it('does nothing as a tile or a button goes down, and all as it comes up', async () => {
  await show('shot');
  const control = app.page.locator('#input-control');
  await app.page.locator('[data-opens="cut"]').hover();
  await app.page.mouse.down();
  await settle(app.page);
  expect(await control.count()).toBe(0);
  await app.page.mouse.up();
  await control.waitFor();
});
