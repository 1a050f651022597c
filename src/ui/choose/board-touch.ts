import type { Canvas, Point } from '../../diagram/canvas';
import { ballNear, pocketNear } from '../../diagram/table-balls';
import type { BallName } from '../../engine/lie/position';
import type { ChooseModel } from '../../state/choose/choose-model';
import type { ChooseMode } from './choose-mode';
import type { Board } from './use-board';
import { DEFAULT_ZONE_M } from './zone-size';

/** What a finger on the drawing works on. */
export interface TouchPorts {
  readonly choose: ChooseModel;
  readonly board: Board;
  /** What lies where the drawing does. */
  drawing(): Element | null;
  mode(): ChooseMode;
  isSnapping(): boolean;
}

/** Handlers of the drawing. */
export interface BoardTouch {
  /** @param taken the ball under the finger beside the table: dragged there, it is put down where it is let go */
  onPointerDown(event: PointerEvent, taken?: BallName | null): void;
  onPointerMove(event: PointerEvent): void;
  onPointerUp(event: PointerEvent): void;
  onPointerCancel(): void;
  /** Whether what was pressed last was dragged. */
  wasDragged(): boolean;
  /** Ends whatever is under way. */
  leave(): void;
}

interface Press {
  readonly pointerId: number;
  /** The drawing's corner on the screen, px. */
  readonly corner: Point;
  readonly start: Point;
  /** The ball pressed, if any, and its centre from the finger, px. */
  readonly ball: BallName | null;
  readonly grip: Point;
  /** What was selected before. */
  readonly selected: BallName | null;
  /** Whether that is still to be put down: then a tap puts it down, close to another ball too. */
  readonly isInHand: boolean;
  /** Whether the ball was taken up beside the table. */
  readonly isFromTray: boolean;
  now: Point;
  isDragging: boolean;
}

/** A finger that moves less than this has tapped, px. */
const TAP_PX = 8;
/** How far from a ball's or a pocket's middle a finger still means it, px. */
const BALL_REACH_PX = 26;
const POCKET_REACH_PX = 34;
/** How far above the finger a ball from beside the table is held, so that it is seen, px. */
const HELD_ABOVE_PX = 30;

/** Taps and drags on the drawing; a drag moves its ball at most once a frame. */
export function createBoardTouch(ports: TouchPorts): BoardTouch {
  const { choose, board, drawing, mode, isSnapping } = ports;
  let press: Press | null = null;
  let wasDragged = false;
  let frame = 0;

  function ballAt(finger: Point): BallName | null {
    return ballNear(choose.open.peek().balls, finger, board.map.peek(), BALL_REACH_PX);
  }
  function isInHand(selected: BallName | null): boolean {
    return selected !== null && choose.open.peek().balls.every(({ name }) => name !== selected);
  }
  /** False off the drawing, where a ball from beside the table is not taken. */
  function dragTo({ ball, now, grip, isFromTray }: Press): boolean {
    const at = { x: now.x + grip.x, y: now.y + grip.y };
    if (ball === null || (isFromTray && !isWithin(board.canvas.peek(), at))) return false;
    const { xM, yM } = board.map.peek().toSpot(at);
    choose.drag(ball, xM, yM);
    return true;
  }
  function follow(): void {
    frame = 0;
    if (press?.isDragging) dragTo(press);
  }
  function stop(): Press | null {
    const ended = press;
    cancelAnimationFrame(frame);
    frame = 0;
    press = null;
    return ended;
  }

  return {
    onPointerDown(event, taken = null) {
      const drawn = drawing();
      if (event.button !== 0 || press !== null || drawn === null) return;
      (event.currentTarget as Element).setPointerCapture?.(event.pointerId);
      const { left, top } = drawn.getBoundingClientRect();
      const corner = { x: left, y: top };
      const start = within(corner, event);
      const ball = taken ?? (mode() === 'balls' ? ballAt(start) : null);
      const selected = choose.selected.peek();
      const isFromTray = taken !== null;
      wasDragged = false;
      press = {
        pointerId: event.pointerId,
        corner,
        start,
        ball,
        grip: isFromTray ? { x: 0, y: -HELD_ABOVE_PX } : gripOf(ball, start, choose, board),
        selected,
        isInHand: !isFromTray && isInHand(selected),
        isFromTray,
        now: start,
        isDragging: false,
      };
      if (ball !== null && !isFromTray && !press.isInHand) choose.select(ball);
    },
    wasDragged: () => wasDragged,
    onPointerMove(event) {
      if (press === null || event.pointerId !== press.pointerId) return;
      press.now = within(press.corner, event);
      if (press.ball === null) return;
      if (!press.isDragging && apart(press.now, press.start) > TAP_PX) {
        press.isDragging = true;
        wasDragged = true;
        choose.select(press.ball);
      }
      if (press.isDragging && frame === 0) frame = requestAnimationFrame(follow);
    },
    onPointerUp(event) {
      if (press === null || event.pointerId !== press.pointerId) return;
      press.now = within(press.corner, event);
      const ended = stop();
      if (ended?.isDragging) {
        if (dragTo(ended)) choose.endDrag();
        else choose.cancelDrag();
      } else if (ended && isTapOnCloth(ended)) {
        tapped(ended.now, mode(), choose, board, isSnapping());
      }
    },
    onPointerCancel() {
      const ended = stop();
      if (ended === null) return;
      choose.cancelDrag();
      choose.select(ended.selected);
    },
    leave() {
      if (stop()?.isDragging) choose.endDrag();
    },
  };
}

function isWithin({ widthPx, heightPx }: Canvas, { x, y }: Point): boolean {
  return x >= 0 && y >= 0 && x <= widthPx && y <= heightPx;
}

function within(corner: Point, { clientX, clientY }: PointerEvent): Point {
  return { x: clientX - corner.x, y: clientY - corner.y };
}

function apart(a: Point, b: Point): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

/** A ball under the finger was selected as it came down. */
function isTapOnCloth({ ball, isInHand, now, start }: Press): boolean {
  return (ball === null || isInHand) && apart(now, start) <= TAP_PX;
}

/** A ball moves as far as the finger does, from where it lies: it never jumps to it. */
function gripOf(
  ball: BallName | null,
  finger: Point,
  { open }: ChooseModel,
  { map }: Board,
): Point {
  const held = open.peek().balls.find(({ name }) => name === ball);
  if (!held) return { x: 0, y: 0 };
  const { x, y } = map.peek().toPoint(held);
  return { x: x - finger.x, y: y - finger.y };
}

function tapped(
  finger: Point,
  mode: ChooseMode,
  choose: ChooseModel,
  board: Board,
  isSnapping: boolean,
): void {
  const { xM, yM } = board.map.peek().toSpot(finger);
  const selected = choose.selected.peek();
  if (mode === 'balls' && selected !== null) choose.place(selected, xM, yM, isSnapping);
  if (mode === 'play') playAt(finger, choose, board);
  if (mode === 'zone') {
    const radiusM = choose.open.peek().zone?.radiusM ?? DEFAULT_ZONE_M;
    choose.markZone({ xM, yM, radiusM });
  }
}

function playAt(finger: Point, choose: ChooseModel, { map, rails }: Board): void {
  const objects = choose.open.peek().balls.filter(({ name }) => name !== 'cue');
  const ball = ballNear(objects, finger, map.peek(), BALL_REACH_PX);
  const pocket = pocketNear(rails.peek().pockets, finger, POCKET_REACH_PX);
  if (ball !== null && ball !== 'cue') choose.playBall(ball);
  else if (pocket !== null) choose.playInto(pocket);
}
