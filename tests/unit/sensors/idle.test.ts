import { expect, it } from 'vitest';
import { whenIdle } from '../../../src/sensors/idle';

/** A page that goes on by hand: frames, timers and idle moments as a browser would call them. */
function pageByHand(tellsIdle: boolean) {
  const due: [string, () => void][] = [];
  const later = (kind: string) => (work: () => void) => void due.push([kind, work]);
  const page = {
    requestAnimationFrame: later('frame'),
    setTimeout: later('timer'),
    ...(tellsIdle && { requestIdleCallback: later('idle') }),
  };
  const next = () => {
    const [kind, work] = due.shift() ?? ['nothing', () => {}];
    work();
    return kind;
  };
  return { page, next };
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
