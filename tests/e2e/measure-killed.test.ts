import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { killBrowser } from '../harness/kill-browser';
import { launchWithProfile } from '../harness/launch-browser';
import { beginTrial, stepTitle, tapDigits } from '../harness/measure-at-table';
import { untilRendered } from '../harness/open-app';
import { type StaticServer, startStaticServer } from '../harness/static-server';
import { tapButton } from '../harness/thumb';
import { untilKept } from '../harness/until-kept';

let profile: string;
let server: StaticServer;
beforeEach(async () => {
  profile = await mkdtemp(join(tmpdir(), 'leeway-profile-'));
  server = await startStaticServer({ folder: 'dist' });
});
afterEach(async () => {
  await server.stop();
  await rm(profile, { recursive: true, force: true, maxRetries: 5 });
});

it('goes on at the same step with the same text after the browser was killed between two keys', async () => {
  const before = await launchWithProfile(profile);
  const page = await before.newPage();
  await page.goto(`${server.url}#kit/measure`);
  await untilRendered(page);
  await beginTrial(page, 'Line');
  await tapButton(page, 'It is placed');
  await tapButton(page, 'Played');
  await tapDigits(page, '12.');
  await tapButton(page, 'right');
  await untilKept(page, 'attempts', {
    typed: expect.objectContaining({ text: expect.stringMatching(/^12\. .* right$/) }),
  });
  const address = page.url();
  await killBrowser(before, profile);

  const after = await launchWithProfile(profile);
  try {
    const again = await after.newPage();
    await again.goto(address);
    await untilRendered(again);
    expect(await stepTitle(again)).toBe('Where did it touch?');
    expect(await again.getByLabel('Figure').textContent()).toMatch(/^12\..*right/);
  } finally {
    await after.close();
  }
});
