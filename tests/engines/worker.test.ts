import { readdirSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { isRefusal } from '../../src/headless/door-refusal';
import { parseFitJob } from '../../src/headless/fit-job';
import type { Outcome } from '../../src/worker/engine-messages';
import { ENGINE_WORK, type JobName, type JobOf } from '../../src/worker/engine-work';
import { ENGINES } from '../harness/engines/engine-page';
import { type EngineApp, openInEngine } from '../harness/engines/open-engine';
import { inventedPositions, someOptions } from '../harness/invented-positions';

/** Invented readings, of two lines and a throw. */
const FIT = parseFitJob({
  tableLengthM: 2.54,
  next: true,
  readings: [
    { trial: 'line', side: 0.45, read: { landingM: -0.058 } },
    { trial: 'line', side: -0.45, read: { landingM: 0.049 } },
    { trial: 'coast', headingDeg: 0, distanceM: 1.1, read: { timeS: 4.6 } },
  ],
});

/** Sines may differ in the last digit, which a search carries far, but not so far. */
const RELATIVE = 1e-7;
/**
 * In the figure's own unit: what is 0 in one may be next to it in the other. Ties come from differences
 * of searches that end within 1e-9 m.
 */
const ABSOLUTE = 1e-8;

const FOLDER = '/app/';

/** Where two results differ, in words, numbers beyond what is allowed. */
function differences(one: unknown, other: unknown, at = ''): string[] {
  if (typeof one === 'number' && typeof other === 'number') {
    const allowed = ABSOLUTE + RELATIVE * Math.max(Math.abs(one), Math.abs(other));
    const isNear = one === other || Math.abs(one - other) <= allowed;
    return isNear ? [] : [`${at}: ${one} and ${other}`];
  }
  if (typeof one !== 'object' || typeof other !== 'object' || !one || !other) {
    return one === other ? [] : [`${at}: ${one} and ${other}`];
  }
  const keys = new Set([...Object.keys(one), ...Object.keys(other)]);
  const [a, b] = [one as Record<string, unknown>, other as Record<string, unknown>];
  return [...keys].flatMap((key) => differences(a[key], b[key], `${at}.${key}`));
}

const numbersIn = (value: unknown): number[] => {
  if (typeof value === 'number') return [value];
  return typeof value === 'object' && value ? Object.values(value).flatMap(numbersIn) : [];
};

describe.each(ENGINES)('the engine’s worker in %s', (engine) => {
  let app: EngineApp;
  beforeAll(async () => {
    app = await openInEngine(engine, { basePath: FOLDER });
    // The app's own policy lets none but the app start a script: a page without one may. It has to
    // lie outside the folder, where the stored app does not answer for it.
    await app.page.open(new URL('/nowhere', app.server.url).href);
  });
  afterAll(async () => {
    await app?.close();
  });

  /** Asks the very worker that ships, and what Node makes of the same job. */
  async function bothAnswers<N extends JobName>(name: N, job: JobOf<N>) {
    const script = readdirSync('dist/assets').find((file) => file.startsWith('engine-worker'));
    const told = await app.page.evaluate(
      (asked) =>
        new Promise<string>((resolve, reject) => {
          const worker = new Worker(asked.script, { type: 'module' });
          // As text: one driver loses whatever is told of twice.
          worker.onmessage = ({ data }) => {
            // Not that it is still at it.
            if ('ok' in data) resolve(JSON.stringify(data));
          };
          worker.onerror = ({ message }) => reject(new Error(message));
          worker.postMessage({ id: 1, name: asked.name, job: asked.job });
        }),
      { script: `${FOLDER}assets/${script}`, name, job: JSON.parse(JSON.stringify(job)) },
    );
    const answer = JSON.parse(told) as Outcome;
    if (!answer.ok) throw new Error(answer.message);
    const work = ENGINE_WORK[name] as (job: JobOf<N>) => unknown;
    return { inPage: answer.result, inNode: work(job) };
  }

  it('fits readings as Node does', async () => {
    if (isRefusal(FIT)) throw new Error(FIT.message);
    const { inPage, inNode } = await bothAnswers('fit', FIT.job);
    expect(differences(inPage, inNode)).toEqual([]);
    expect(numbersIn(inPage).length).toBeGreaterThan(50);
  });

  it('works a way out in full and plays its fan as Node does', async () => {
    const [position] = inventedPositions();
    if (!position) throw new Error('there is no position');
    const [option] = [...someOptions(position, 6)].sort((a, b) => b.chance.share - a.chance.share);
    if (!option) throw new Error('there is no way');
    for (const name of ['refine', 'fan'] as const) {
      const { inPage, inNode } = await bothAnswers(name, { asked: position.asked, option });
      expect(differences(inPage, inNode)).toEqual([]);
      expect(numbersIn(inPage).length).toBeGreaterThan(10);
    }
    expect(await app.page.problems()).toEqual([]);
  });
});
