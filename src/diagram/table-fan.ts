import { newPlace, type Phase, placeAt } from '../engine/model/phase';
import type { FanPlay, RestSpread } from '../engine/options/ranked-way';
import type { Outcome } from '../engine/table/table-play';
import { type Canvas, type Circle, type Label, type Point, textWidthPx } from './canvas';
import type { BedSpot } from './table-diamonds';
import type { TableMap } from './table-map';
import { pathThrough } from './table-rails';

/** The cue ball's way after one stroke of a fan, px. */
export interface FanPath {
  readonly hit: FanPlay['hit'];
  readonly path: string;
  readonly end: Point;
  readonly endKind: Outcome['kind'];
  /** Null where no room is left for words. */
  readonly label: Label | null;
}

/** Straight pieces to a phase: it bends little in one. */
const STEPS = 14;

/** Misses first, so that what goes is drawn over them, the true hit last of all. */
const ORDER: readonly FanPlay['hit'][] = ['missed-thin', 'missed-full', 'thin', 'full', 'true'];

/**
 * @param letters how long each label is, by hit
 * @param balls which labels keep off
 */
export function layOutFan(
  plays: readonly FanPlay[],
  letters: (play: FanPlay) => number,
  map: TableMap,
  canvas: Canvas,
  balls: readonly Circle[],
): readonly FanPath[] {
  const taken: Box[] = balls.map(({ cx, cy, r }) => ({
    left: cx - r,
    right: cx + r,
    top: cy - r,
    bottom: cy + r,
  }));
  const paths = new Map<FanPlay['hit'], FanPath>();
  for (const hit of [...ORDER].reverse()) {
    const play = plays.find((one) => one.hit === hit);
    const run = play?.play.balls[0];
    if (!play || !run) continue;
    const end = map.toPoint(endOf(run.outcome, run.phases, run.from));
    paths.set(hit, {
      hit,
      path: pathThrough([run.from, ...run.phases.flatMap(spotsOf)].map(map.toPoint)),
      end,
      endKind: run.outcome.kind,
      label: placeLabel(end, textWidthPx(letters(play), canvas.textPx), canvas, taken),
    });
  }
  return ORDER.flatMap((hit) => paths.get(hit) ?? []);
}

function spotsOf(phase: Phase): readonly BedSpot[] {
  const place = newPlace();
  return Array.from({ length: STEPS }, (_, step) => {
    placeAt(phase, (phase.durationS * (step + 1)) / STEPS, place);
    return { xM: place.xM, yM: place.yM };
  });
}

/** A pocketed ball ends where its last piece does. */
function endOf(outcome: Outcome, phases: readonly Phase[], from: BedSpot): BedSpot {
  if (outcome.kind !== 'pocketed') return outcome;
  return phases.flatMap(spotsOf).at(-1) ?? from;
}

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Clear of the mark at a path's end, px. */
const OFF_PX = 9;

/** Beside, above or below a point, within the canvas and off the words already there. */
function placeLabel({ x, y }: Point, widthPx: number, canvas: Canvas, taken: Box[]): Label | null {
  const { textPx } = canvas;
  const beside = y + textPx * 0.35;
  const places: readonly Label[] = [
    { x: x + OFF_PX, y: beside, anchor: 'start' },
    { x: x - OFF_PX, y: beside, anchor: 'end' },
    { x, y: y - OFF_PX, anchor: 'middle' },
    { x, y: y + OFF_PX + textPx * 0.8, anchor: 'middle' },
    { x: x + OFF_PX, y: beside + textPx, anchor: 'start' },
    { x: x + OFF_PX, y: beside - textPx, anchor: 'start' },
    { x: x - OFF_PX, y: beside + textPx, anchor: 'end' },
    { x: x - OFF_PX, y: beside - textPx, anchor: 'end' },
  ];
  for (const label of places) {
    const box = boxOf(label, widthPx, textPx);
    const isWithin =
      box.left >= 0 && box.right <= canvas.widthPx && box.top >= 0 && box.bottom <= canvas.heightPx;
    if (!isWithin || taken.some((other) => overlap(box, other))) continue;
    taken.push(box);
    return label;
  }
  return null;
}

const SHARE_BEFORE = { start: 0, middle: 0.5, end: 1 } as const;

function boxOf({ x, y, anchor }: Label, widthPx: number, textPx: number): Box {
  const left = x - SHARE_BEFORE[anchor] * widthPx;
  return { left, right: left + widthPx, top: y - textPx * 0.8, bottom: y + textPx * 0.25 };
}

function overlap(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

/** Where the cue ball rests over many strokes: a dot each, and a ring a deviation about the middle. */
export interface SpreadView {
  /** Null where it would be wider than the table, and so say nothing. */
  readonly ring: Circle | null;
  readonly dots: readonly Point[];
}

/** Dots beyond this many would blacken the bed. */
const MOST_DOTS = 60;

/** Null where no stroke left the cue ball on the table. */
export function layOutSpread({ places, sdM, ...middle }: RestSpread, map: TableMap) {
  if (places.length === 0) return null;
  const { x, y } = map.toPoint(middle);
  const radiusPx = sdM * map.pxPerM;
  const ring = { cx: x, cy: y, r: radiusPx };
  const view: SpreadView = {
    ring: 2 * radiusPx > Math.min(map.bed.width, map.bed.height) ? null : ring,
    dots: places.slice(0, MOST_DOTS).map(map.toPoint),
  };
  return view;
}
