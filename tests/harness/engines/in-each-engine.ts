import { afterAll, beforeAll, describe } from 'vitest';
import { ENGINES, type EnginePage } from './engine-page';
import { type EngineApp, openInEngine } from './open-engine';

/** The app as it is open while a test runs. */
interface Opened {
  readonly app: EngineApp;
  readonly page: EnginePage;
}

/**
 * Describes something in each engine, in which the app is opened once for all of its tests.
 *
 * @param tests defines them; what it is given can be asked within a test alone
 */
export function inEachEngine(what: string, tests: (opened: () => Opened) => void): void {
  describe.each(ENGINES)(`${what} in %s`, (engine) => {
    let app: EngineApp;
    beforeAll(async () => {
      app = await openInEngine(engine);
    });
    afterAll(async () => {
      await app?.close();
    });
    tests(() => ({ app, page: app.page }));
  });
}
