import { expect, it } from 'vitest';
import { whenIdle } from '../../../src/sensors/idle';

/** Longer than anything that a page which is seen is waited for, ms. */
const LONG_MS = 1000;

/** A page that goes on by hand: frames, timers and idle moments as a browser would call them. */
function pageByHand(tellsIdle: boolean) {
  const due: [string, () => void][] = [];
  const later = (kind: string) => (work: () => void) => void due.push([kind, work]);
  const page = {
    requestAnimationFrame: later('frame'),
    setTimeout: (work: () => void, ms = 0) => later(ms > LONG_MS ? 'patience' : 'timer')(work),
    ...(tellsIdle && { requestIdleCallback: later('idle') }),
  };
  /** The next thing that a page which is seen does. */
  const next = () => {
    const at = due.findIndex(([kind]) => kind !== 'patience');
    const [kind, work] = due.splice(at, at < 0 ? 0 : 1)[0] ?? ['nothing', () => {}];
    work();
    return kind;
  };
  const losePatience = () => {
    for (const [kind, work] of [...due]) if (kind === 'patience') work();
  };
  return { page, next, losePatience };
}

it('comes after a frame is out, once the page says it is idle', async () => {
  const { page, next } = pageByHand(true);
  const idle = whenIdle(page);
  expect([next(), next(), next()]).toEqual(['frame', 'timer', 'idle']);
  await idle;
  expect(next()).toBe('nothing');
});

it('comes a moment after it where the browser does not tell', async () => {
  const { page, next } = pageByHand(false);
  const idle = whenIdle(page);
  expect([next(), next(), next()]).toEqual(['frame', 'timer', 'timer']);
  await idle;
});

it('does not wait for the frames of a page that nobody sees, and asks once alone', async () => {
  const { page, next, losePatience } = pageByHand(true);
  const idle = whenIdle(page);
  losePatience();
  expect([next(), next(), next(), next()]).toEqual(['frame', 'idle', 'timer', 'nothing']);
  await idle;
});
