import type { OpenAppOptions } from '../open-app';
import { type StaticServer, startStaticServer } from '../static-server';
import type { EngineName, EnginePage } from './engine-page';
import { untilRendered } from './engine-thumb';
import { openFirefox } from './firefox-page';
import { openWebKit } from './webkit-page';

const OPEN = { Firefox: openFirefox, WebKit: openWebKit };

export interface EngineApp {
  readonly server: StaticServer;
  readonly page: EnginePage;
  /** Goes to another place of the app, by what follows its address, as a new tab does. */
  goTo(hash: string): Promise<void>;
  close(): Promise<void>;
}

/** Serves the built app on a free port and opens it in a fresh browser of that engine. */
export async function openInEngine(
  engine: EngineName,
  { basePath = '/', hash = '' }: Pick<OpenAppOptions, 'basePath' | 'hash'> = {},
): Promise<EngineApp> {
  // WebKit shows the app at a phone's width in a frame.
  const server = await startStaticServer({ folder: 'dist', basePath, isFramed: true });
  const page = await OPEN[engine]();
  const goTo = async (place: string) => {
    await page.open(server.url + place);
    await untilRendered(page);
  };
  await goTo(hash);
  return {
    server,
    page,
    goTo,
    close: async () => {
      await page.close();
      await server.stop();
    },
  };
}
