import type { Page } from 'playwright-core';
import { runInDiamonds } from '../../src/units/run-in-diamonds';
import { predictedTrial } from './predicted-trial';
import { settle } from './read-shot';
import { tap, tapButton } from './thumb';

/** The table of a first visit, and its balls. */
const LENGTH_M = 2.54;
const RADIUS_M = 0.028575;

/** Begins the shot of a trial that the Measure page offers, and says its name. */
export async function beginTrial(page: Page, label: string): Promise<string> {
  const next = page.locator('.next-shot b').first();
  await next.waitFor();
  // What teaches most may change until then.
  await untilFitted(page);
  if (((await next.textContent()) ?? '').startsWith(label)) {
    await tapButton(page, 'Play it');
  } else {
    await tap(page, page.locator('.trial-row').filter({ hasText: new RegExp(`^${label}`) }));
  }
  await page.locator('.attempt').waitFor();
  const name = (await page.locator('.attempt').getAttribute('aria-label')) ?? '';
  if (!name.startsWith(label)) throw new Error(`${label} was wanted, ${name} was begun`);
  return name;
}

/** Waits until Measure says no more that it works out the readings. */
export async function untilFitted(page: Page): Promise<void> {
  await page.locator('.measure-status:empty').waitFor({ state: 'attached' });
}

/** What the heading of the step says. */
export async function stepTitle(page: Page): Promise<string> {
  await settle(page);
  return (await page.locator('h1').first().textContent()) ?? '';
}

/** Taps a figure and its way on the keypad, and enters it. */
export async function tapFigure(page: Page, figure: string, way = ''): Promise<void> {
  await tapDigits(page, figure);
  if (way !== '') await tapButton(page, way);
  await tapButton(page, 'Enter');
  await settle(page);
}

export async function tapDigits(page: Page, figure: string): Promise<void> {
  for (const key of figure) await tapButton(page, key);
  await settle(page);
}

/** Two taps on the pad that the hardware says are so far apart, and the time kept. */
async function tapTime(page: Page, seconds: number): Promise<void> {
  const pad = page.locator('.tap-pad');
  const startS = Date.now() / 1000;
  await tap(page, pad, startS);
  await page.locator('.tap-pad.is-running').waitFor();
  await tap(page, pad, startS + seconds);
  await tapButton(page, 'Keep it');
}

/** Which step of which trial is on the screen. */
export type OnStep = (step: string) => Promise<void>;

/**
 * Plays an attempt from where it stands to its result, all by taps, and reads what the engine says
 * of a kit that is not the one in play.
 *
 * @param onStep called whenever a step, or the result, has come up
 */
export async function playAttempt(
  page: Page,
  name: string,
  onStep: OnStep = async () => undefined,
): Promise<void> {
  const { readings, buttHeightM, distanceM } = predictedTrial(name);
  const table = { bedLengthM: LENGTH_M, ballRadiusM: RADIUS_M, firstLegM: distanceM };
  const taken = new Map<string, () => Promise<void>>([
    ['Raise the butt', () => tapFigure(page, (buttHeightM * 100).toFixed(1))],
    ['Play it and time it', () => tapTime(page, readings.timeS ?? 1)],
    ['Roll it and time it', () => tapTime(page, readings.timeS ?? 1)],
    ['How far did it roll?', () => tapFigure(page, distanceM.toFixed(2))],
    ['Where did it touch?', () => tapSigned(page, readings.landingM ?? readings.objectLandingM)],
    ['Where is the cue ball?', () => tapSigned(page, readings.cueBallM, ['back', 'on'])],
    ['Where is the other ball?', () => tapSigned(page, readings.objectBallM, ['', ''])],
    ['How long is the bridge?', () => tapSigned(page, readings.bridgeM, ['', ''])],
    ['How far did it run?', () => tapDiamonds(page, runInDiamonds(readings.runM ?? 0, table))],
    ['Where did it arrive?', () => tapDiamonds(page, ((readings.upM ?? 0) * 8) / LENGTH_M)],
  ]);
  for (let step = 1; step <= MOST_STEPS; step++) {
    const title = await stepTitle(page);
    await onStep(title === 'Taken down' ? 'result' : `${step}`);
    if (title === 'Taken down') return;
    const take = taken.get(title);
    if (take) await take();
    else await tap(page, page.locator('.attempt-control > .button-main'));
  }
  throw new Error(`${name} never came to its result`);
}

/** No trial has so many, the result among them. */
const MOST_STEPS = 6;

const LABELS = [
  'Line',
  'Curve',
  'Stop',
  'Throw',
  'Coast',
  'Pivot',
  'Speed',
  'Rebound',
  'Angle',
] as const;

/** Plays one shot of every trial, from the Measure page and back to it. */
export async function playEveryTrial(
  page: Page,
  onStep: (trial: string, step: string) => Promise<void>,
): Promise<void> {
  for (const label of LABELS) {
    const name = await beginTrial(page, label);
    await playAttempt(page, name, (step) => onStep(label.toLowerCase(), step));
    await page.getByText('Working out what it tells…').waitFor({ state: 'hidden' });
    await settle(page);
    await tapButton(page, 'To all trials');
  }
}

const tapDiamonds = (page: Page, diamonds: number) => tapFigure(page, diamonds.toFixed(2));

async function tapSigned(page: Page, valueM = 0, [minus, plus] = ['left', 'right']): Promise<void> {
  const figure = Math.abs(valueM * 100).toFixed(1);
  await tapFigure(page, figure, valueM < 0 ? minus : plus);
}
