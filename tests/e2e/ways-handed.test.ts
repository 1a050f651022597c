import { afterEach, expect, it } from 'vitest';
import { linkOfWay, openOneOf } from '../harness/all-ways-at-hand';
import { runAxe } from '../harness/axe';
import { type OpenApp, openApp } from '../harness/open-app';
import { settle } from '../harness/read-shot';
import { tapButton } from '../harness/thumb';

const open: OpenApp[] = [];
afterEach(async () => {
  for (const { guard, close } of open.splice(0)) {
    expect(guard.problems).toEqual([]);
    await close();
  }
});
async function phone(hash: string): Promise<OpenApp> {
  const app = await openApp({ hash });
  open.push(app);
  return app;
}

it('hands a bank from one phone to another as it is laid: point, stroke and fan', async () => {
  const coach = (await phone('#choose')).page;
  await openOneOf(coach, 'bank');
  const told = async (page: typeof coach) => ({
    title: await page.locator('#chosen-way').textContent(),
    stroke: await page.locator('.way-stroke').textContent(),
    ends: await page.locator('.fan-lines').first().textContent(),
    paths: await page
      .locator('.fan-path')
      .evaluateAll((paths) => paths.map((path) => path.getAttribute('d')?.split(' ').length)),
  });
  const here = await told(coach);
  await tapButton(coach, 'Aim it');
  await coach.locator('.board-aim').waitFor();
  const point = (await coach.locator('.aim-point').first().textContent()) ?? '';
  expect(point).toMatch(/^Point the cue at /);
  await tapButton(coach, /How it plays/);
  const link = await linkOfWay(coach);
  const [, hash = ''] = link.split('#');
  expect(hash.length).toBeLessThan(130);

  const { page } = await phone(`#${hash}`);
  await page.locator('.link-part', { hasText: point }).waitFor();
  await tapButton(page, 'Keep it');
  await page.locator('.undo-delete', { hasText: 'with its way laid on it' }).waitFor();
  await tapButton(page, 'Go to Choose');
  await page.locator('.board-aim').waitFor();
  expect(await told(page)).toEqual(here);
  expect(await page.locator('.aim-point').textContent()).toBe(point);
  expect(await page.locator('.way-warning').count()).toBe(0);
  await settle(page);
  expect((await runAxe(page)).found).toEqual([]);
  await tapButton(page, /All ways/);
  await page.locator('.all-way-row').first().waitFor();
});
