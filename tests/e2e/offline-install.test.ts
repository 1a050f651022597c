import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { launchWithProfile } from '../harness/launch-browser';
import { untilOfflineReady } from '../harness/open-app';
import { startStaticServer } from '../harness/static-server';

it.each(['/', '/some/where/'])(
  'can be installed from %s, as an app of its own',
  async (basePath) => {
    const profile = await mkdtemp(join(tmpdir(), 'leeway-profile-'));
    const server = await startStaticServer({ folder: 'dist', basePath });
    const context = await launchWithProfile(profile, true);
    try {
      const page = await context.newPage();
      await page.goto(server.url);
      await untilOfflineReady(page);
      const devtools = await context.newCDPSession(page);

      const { installabilityErrors } = await devtools.send('Page.getInstallabilityErrors');
      expect(installabilityErrors).toEqual([]);
      const { errors, url } = await devtools.send('Page.getAppManifest');
      expect(errors).toEqual([]);
      expect(url).toBe(`${server.url}manifest.webmanifest`);
      // Two copies in two folders of one host must not pass for one app.
      expect(await devtools.send('Page.getAppId')).toMatchObject({ appId: server.url });
    } finally {
      await context.close();
      await server.stop();
      await rm(profile, { recursive: true, force: true, maxRetries: 5 });
    }
  },
);
