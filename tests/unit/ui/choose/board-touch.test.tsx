import { signal } from '@preact/signals';
import { describe, expect, it, vi } from 'vitest';
import { ballSize } from '../../../../src/diagram/table-balls';
import { layOutTable } from '../../../../src/diagram/table-map';
import { layOutRails } from '../../../../src/diagram/table-rails';
import type { BallName } from '../../../../src/engine/lie/position';
import { createBoardTouch } from '../../../../src/ui/choose/board-touch';
import type { ChooseMode } from '../../../../src/ui/choose/choose-mode';
import { CUT, EMPTY, inventedChoose, SHAPE } from './invented-choose';

const RADIUS_M = 0.028575;
const CANVAS = { widthPx: 300, heightPx: 560, textPx: 13 };
const MAP = layOutTable(SHAPE, CANVAS);

function setUp(mode: ChooseMode, position = CUT) {
  const { choose } = inventedChoose(position);
  const drag = vi.spyOn(choose, 'drag');
  const drawing = document.createElement('div');
  const touch = createBoardTouch({
    choose,
    drawing: () => drawing,
    board: {
      canvas: signal(CANVAS),
      map: signal(MAP),
      rails: signal(layOutRails(SHAPE, MAP)),
      size: signal(ballSize(RADIUS_M, MAP)),
    },
    mode: () => mode,
    isSnapping: () => true,
  });
  for (const [type, handler] of [
    ['pointerdown', touch.onPointerDown],
    ['pointermove', touch.onPointerMove],
    ['pointerup', touch.onPointerUp],
    ['pointercancel', touch.onPointerCancel],
  ] as const) {
    drawing.addEventListener(type, handler as EventListener);
  }
  const send = (type: string, x: number, y: number, pointerType = 'touch') => {
    const init = { clientX: x, clientY: y, pointerId: 1, pointerType, button: 0 };
    drawing.dispatchEvent(new PointerEvent(type, init));
  };
  const pointOf = (name: BallName) => MAP.toPoint(choose.ballAt(name) ?? { xM: 0, yM: 0 });
  const tap = ({ x, y }: { x: number; y: number }) => {
    send('pointerdown', x - 1, y);
    send('pointerup', x, y);
  };
  return { choose, drag, send, tap, pointOf, touch };
}

const frame = () => new Promise((resolve) => requestAnimationFrame(resolve));

describe('a ball beside the table', () => {
  /** Takes the ball up below the drawing, as from the tray. */
  function takeUp(name: BallName) {
    const opened = setUp('balls', EMPTY);
    const { touch } = opened;
    const button = document.createElement('button');
    button.addEventListener('pointerdown', (event) =>
      touch.onPointerDown(event as PointerEvent, name),
    );
    button.addEventListener('pointermove', touch.onPointerMove as EventListener);
    button.addEventListener('pointerup', touch.onPointerUp as EventListener);
    const send = (type: string, { x, y }: { x: number; y: number }) =>
      button.dispatchEvent(
        new PointerEvent(type, { clientX: x, clientY: y, pointerId: 1, button: 0 }),
      );
    return { ...opened, send };
  }
  const TRAY = { x: 150, y: 700 };

  it('is put down where it is dragged to, above the finger, as one edit', async () => {
    const { choose, send, touch } = takeUp(4);
    send('pointerdown', TRAY);
    expect(choose.selected.value).toBeNull();
    const { x, y } = MAP.toPoint({ xM: 0.2, yM: -0.3 });
    send('pointermove', { x, y: y + 400 });
    await frame();
    expect(choose.ballAt(4)).toBeNull();
    send('pointermove', { x, y: y + 60 });
    await frame();
    expect(choose.ballAt(4)).not.toBeNull();
    send('pointerup', { x, y: y + 30 });
    expect(choose.ballAt(4)?.xM).toBeCloseTo(0.2, 9);
    expect(choose.ballAt(4)?.yM).toBeCloseTo(-0.3, 9);
    expect(choose.selected.value).toBe(4);
    expect(touch.wasDragged()).toBe(true);
    choose.undo();
    expect(choose.ballAt(4)).toBeNull();
    expect(choose.canUndo.value).toBe(false);
  });

  it('stays off where it is let go beside the table, and is not dragged by a tap', async () => {
    const { choose, send, touch } = takeUp(4);
    send('pointerdown', TRAY);
    send('pointermove', MAP.toPoint({ xM: 0, yM: 0 }));
    await frame();
    expect(choose.ballAt(4)).not.toBeNull();
    send('pointerup', TRAY);
    expect(choose.ballAt(4)).toBeNull();
    expect(choose.canUndo.value).toBe(false);
    send('pointerdown', TRAY);
    send('pointerup', TRAY);
    expect(touch.wasDragged()).toBe(false);
    expect(choose.ballAt(4)).toBeNull();
  });
});

describe('a finger on the table', () => {
  it('selects the ball it taps', () => {
    const { choose, tap, pointOf } = setUp('balls');
    tap(pointOf(8));
    expect(choose.selected.value).toBe(8);
    expect(choose.canUndo.value).toBe(false);
  });

  it('puts the ball in the hand down where it taps', () => {
    const { choose, tap } = setUp('balls', EMPTY);
    choose.select(4);
    tap(MAP.toPoint({ xM: 0.3, yM: -0.4 }));
    expect(choose.ballAt(4)?.xM).toBeCloseTo(0.3, 9);
    expect(choose.ballAt(4)?.yM).toBeCloseTo(-0.4, 9);
  });

  it('puts a ball in the hand down rather than take up one beside the finger', () => {
    const { choose, tap, pointOf } = setUp('balls');
    choose.select(4);
    tap(pointOf(8));
    expect(choose.selected.value).toBe(4);
    expect(choose.ballAt(4)).toBeNull();
    expect(choose.problem.value).toMatch(/^The 8 is in the way/);
    const { x, y } = pointOf(8);
    tap({ x: x + 20, y });
    expect(choose.selected.value).toBe(4);
    expect(pointOf(4)).toEqual({ x: expect.closeTo(x + 20, 6), y: expect.closeTo(y, 6) });
  });

  it('drags the ball under the finger even so', async () => {
    const { choose, send, pointOf } = setUp('balls');
    choose.select(4);
    const { x, y } = pointOf(8);
    send('pointerdown', x, y);
    expect(choose.selected.value).toBe(4);
    send('pointermove', x + 40, y);
    await frame();
    send('pointerup', x + 40, y);
    expect(choose.selected.value).toBe(8);
    expect(pointOf(8).x).toBeCloseTo(x + 40, 6);
    expect(choose.ballAt(4)).toBeNull();
  });

  it('puts it down close to another ball as well', () => {
    const { choose, tap } = setUp('balls');
    const eight = choose.ballAt(8) ?? { xM: 0, yM: 0 };
    choose.select(4);
    tap(MAP.toPoint({ xM: eight.xM + 2.5 * RADIUS_M, yM: eight.yM }));
    expect(choose.ballAt(4)).not.toBeNull();
  });

  it('drags a ball as far as it moves itself, without a jump, as one edit', async () => {
    const { choose, drag, send, pointOf } = setUp('balls');
    const { x, y } = pointOf(8);
    // Beside its middle: the ball is not drawn to the finger either.
    send('pointerdown', x + 9, y + 12);
    for (let move = 1; move <= 5; move++) send('pointermove', x + 9 + 10 * move, y + 12);
    expect(drag).not.toHaveBeenCalled();
    await frame();
    expect(drag).toHaveBeenCalledOnce();
    send('pointerup', x + 59, y + 12);
    const end = pointOf(8);
    expect(end.x).toBeCloseTo(x + 50, 6);
    expect(end.y).toBeCloseTo(y, 6);
    choose.undo();
    expect(pointOf(8)).toEqual({ x, y });
    expect(choose.canUndo.value).toBe(false);
  });

  it('takes a drag back that is taken away', async () => {
    const { send, pointOf } = setUp('balls');
    const { x, y } = pointOf(8);
    send('pointerdown', x, y);
    send('pointermove', x + 40, y);
    await frame();
    expect(pointOf(8)).not.toEqual({ x, y });
    send('pointercancel', x + 40, y);
    expect(pointOf(8)).toEqual({ x, y });
  });

  it('takes nothing else back with a drag that moved no ball yet', () => {
    const { choose, send, pointOf } = setUp('balls');
    choose.playBall(11);
    choose.select(12);
    const { x, y } = pointOf(8);
    send('pointerdown', x, y);
    send('pointermove', x + 40, y);
    send('pointercancel', x + 40, y);
    expect(choose.open.value.goal.ball).toBe(11);
    expect(pointOf(8)).toEqual({ x, y });
    expect(choose.selected.value).toBe(12);
  });

  it('lets a mouse hold a ball where it grips it', () => {
    const { send, pointOf } = setUp('balls');
    const { x, y } = pointOf(8);
    send('pointerdown', x + 3, y, 'mouse');
    send('pointermove', x + 43, y + 10, 'mouse');
    send('pointerup', x + 43, y + 10, 'mouse');
    expect(pointOf(8).x).toBeCloseTo(x + 40, 6);
    expect(pointOf(8).y).toBeCloseTo(y + 10, 6);
  });

  it('chooses the ball to play, never the cue ball, and the pocket', () => {
    const { choose, tap, pointOf } = setUp('play');
    tap(pointOf(11));
    expect(choose.open.value.goal.ball).toBe(11);
    tap(pointOf('cue'));
    expect(choose.open.value.goal.ball).toBe(11);
    const hole = SHAPE.pockets.find(({ name }) => name === 'near-left')?.drop ?? { x: 0, y: 0 };
    tap(MAP.toPoint({ xM: hole.x, yM: hole.y }));
    expect(choose.open.value.goal.pocket).toBe('near-left');
  });

  it('marks the zone where it taps, as large as it was', () => {
    const { choose, tap } = setUp('zone');
    choose.markZone({ xM: 0, yM: 0, radiusM: 0.4 });
    tap(MAP.toPoint({ xM: 0.2, yM: 0.5 }));
    expect(choose.open.value.zone?.xM).toBeCloseTo(0.2, 9);
    expect(choose.open.value.zone?.radiusM).toBe(0.4);
  });

  it('changes nothing while ways are compared', () => {
    const { choose, tap, pointOf } = setUp('ways');
    tap(pointOf(8));
    tap(MAP.toPoint({ xM: 0, yM: 0 }));
    expect(choose.canUndo.value).toBe(false);
    expect(choose.selected.value).toBeNull();
  });
});
