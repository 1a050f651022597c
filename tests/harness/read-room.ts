import type { Page } from 'playwright-core';
import { type Shot, strokeOf } from '../../src/engine/direct/shot';
import { solveAim } from '../../src/engine/direct/solve-aim';
import { DEFAULT_KIT } from '../../src/engine/kit/kit';
import { UNMEASURED } from '../../src/engine/kit/kit-spread';
import { type RoomForError, roomForError } from '../../src/engine/room/room-for-error';
import type { StrokeProfile } from '../../src/engine/room/stroke-profile';
import type { RoomWindows } from '../../src/engine/room/windows';
import { ANYBODY } from '../../src/state/player/rough-stroke';
import { DEFAULT_POCKET, DEFAULT_SHOT } from '../../src/store/default-desk';
import type { Pocket } from '../../src/store/records';
import { tipsPerRadius } from '../../src/units/tip-unit';
import { settle } from './read-shot';
import { openTile, tapButton } from './thumb';
import { untilCompared } from './touch-table';

/** The engine's own room for error of a shot, on the kit and for the player the app opens with. */
export function engineRoom(
  shot: Shot,
  pocket: Pocket,
  profile: StrokeProfile = ANYBODY,
): RoomForError {
  const answer = solveAim(shot, DEFAULT_KIT);
  if (!answer.ok) throw new Error(answer.reason);
  const target = { kind: 'mouth', ...pocket } as const;
  const stroke = strokeOf(shot, answer.aimRad);
  const kit = DEFAULT_KIT;
  return roomForError({ balls: shot, target, kit, stroke, profile, spread: UNMEASURED });
}

/** Its windows. Throws where the ball does not go. */
export function engineWindows(shot: Shot, pocket: Pocket): RoomWindows {
  const { windows } = engineRoom(shot, pocket);
  if (!windows) throw new Error('the ball does not go');
  return windows;
}

/** Invented: so far and with so much side that it goes thin when softer and full when harder. */
export const LONG_SHOT: Shot = { ...DEFAULT_SHOT, distanceM: 1.15, side: -0.4 };
export const FAR_POCKET: Pocket = { ...DEFAULT_POCKET, distanceM: 0.8 };

/** Makes the worked example that shot into that pocket: three changes. */
export async function typeLongShot(page: Page): Promise<void> {
  const typed = [
    ['distance', 'Distance', `${LONG_SHOT.distanceM}`],
    ['tip', 'Side, left or right', `${LONG_SHOT.side * tipsPerRadius(DEFAULT_KIT)}`],
    ['pocket', 'Distance to the pocket', `${FAR_POCKET.distanceM}`],
  ] as const;
  for (const [tile, name, figure] of typed) {
    await openTile(page, tile);
    const field = page.getByRole('textbox', { name, exact: true });
    await field.fill(figure);
    await field.blur();
  }
  await tapButton(page, 'Close');
}

/** The room for error is worked out a moment after the last change, where anything shows it. */
export async function untilAssessed(page: Page): Promise<void> {
  const told = '.answer-meaning:not(.is-stale) .why-certainty:not(:empty)';
  await page
    .locator(`${told}, .shot-entry, .kit-place .the-question, .coach`)
    .filter({ visible: true })
    .first()
    .waitFor();
  await settle(page);
}

/** What a screen shows only once a worker has told it is there. */
export async function untilTold(page: Page, screen: string): Promise<void> {
  if (screen.startsWith('shot')) await untilAssessed(page);
  if (screen === 'choose/ways') await untilCompared(page);
  const isCard = /^kit\/(card|drill)/.test(screen);
  if (!isCard && !/^log\/(test\/new|practice\/.)/.test(screen)) return;
  await page
    .locator(isCard ? '.card-side' : '.test-shot:not(.is-stale)')
    .first()
    .waitFor();
  await settle(page);
}

/** The text of the first such element. */
export async function textOf(page: Page, selector: string): Promise<string> {
  return (await page.locator(selector).first().textContent()) ?? '';
}

/** Where the bright piece of a bar begins and ends, as shares of its track. */
export async function barOf(page: Page, selector: string): Promise<readonly [number, number]> {
  await untilAssessed(page);
  const line = page.locator(`${selector} .bar-room`);
  const share = async (name: string) =>
    Number.parseFloat((await line.getAttribute(name)) ?? '') / 100;
  return [await share('x1'), await share('x2')];
}

/** A speed, m/s, as a share of the usual ones that the bar under its tile spans. */
export function alongSpeeds(speedMps: number): number {
  const [least, most] = [0.2, 5];
  return (speedMps - least) / (most - least);
}
