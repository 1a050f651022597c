import { cleanup, render, screen } from '@testing-library/preact';
import { afterEach, expect, it } from 'vitest';
import type { Point } from '../../../src/diagram/canvas';
import { type Move, useDrag } from '../../../src/ui/shot/use-drag';

afterEach(cleanup);

/** A drawing of which it is told later what lies under the finger, and all that came of touches. */
function openDrawing() {
  const told: string[] = [];
  const waiting: ((grip: Move | null) => void)[] = [];
  const model = {
    beginGesture: () => told.push('begin'),
    endGesture: (isTakenAway?: boolean) => told.push(isTakenAway ? 'back' : 'end'),
  };
  function Drawing() {
    const grab = () => new Promise<Move | null>((resolve) => waiting.push(resolve));
    const onTap = ({ x, y }: Point) => told.push(`tap ${x},${y}`);
    return <div role="img" aria-label="drawing" {...useDrag({ model, grab, onTap })} />;
  }
  const { unmount } = render(<Drawing />);
  const touch = (kind: string, x = 0, y = 0) =>
    screen
      .getByRole('img')
      .dispatchEvent(
        new PointerEvent(`pointer${kind}`, { clientX: x, clientY: y, pointerId: 1, bubbles: true }),
      );
  const grip = async (what: Move | null = ({ x, y }) => told.push(`to ${x},${y}`)) => {
    waiting.shift()?.(what);
    await Promise.resolve();
  };
  return { told, touch, grip, unmount };
}

it('follows the finger once it is known what it holds, all in one gesture', async () => {
  const { told, touch, grip } = openDrawing();
  touch('down', 10, 10);
  touch('move', 40, 10);
  expect(told).toEqual([]);
  await grip();
  touch('move', 50, 10);
  touch('up', 50, 10);
  expect(told).toEqual(['begin', 'to 40,10', 'to 50,10', 'end']);
});

it('takes what was let go before that to where the finger left it', async () => {
  const { told, touch, grip } = openDrawing();
  touch('down', 10, 10);
  touch('move', 40, 20);
  touch('up', 40, 20);
  touch('move', 90, 90);
  await grip();
  expect(told).toEqual(['begin', 'to 40,20', 'end']);
});

it('moves nothing where nothing turns out to lie there, and takes no drag for a tap', async () => {
  const { told, touch, grip } = openDrawing();
  touch('down', 10, 10);
  touch('move', 40, 10);
  await grip(null);
  touch('up', 40, 10);
  expect(told).toEqual([]);
});

it('tells of a tap at once, and moves nothing for it afterwards', async () => {
  const { told, touch, grip } = openDrawing();
  touch('down', 10, 10);
  touch('move', 12, 10);
  touch('up', 12, 10);
  expect(told).toEqual(['tap 10,10']);
  await grip();
  expect(told).toEqual(['tap 10,10']);
});

it.each(['the system', 'a later touch', 'leaving'])(
  'forgets what was dragged where %s comes between',
  async (what) => {
    const { told, touch, grip, unmount } = openDrawing();
    touch('down', 10, 10);
    touch('move', 40, 10);
    if (what === 'the system') touch('cancel');
    else touch('up', 40, 10);
    if (what === 'a later touch') touch('down', 20, 20);
    if (what === 'leaving') unmount();
    await grip();
    expect(told.filter((word) => word !== 'end')).toEqual([]);
  },
);
