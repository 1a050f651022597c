import { newPlace, type Phase, placeAt } from '../engine/motion/phase';
import type { FanPlay, RestSpread } from '../engine/plan/ranked-way';
import type { Outcome } from '../engine/table/table-play';
import type { Canvas, Circle, Label, Point } from './canvas';
import type { BedSpot } from './table-diamonds';
import type { TableMap } from './table-map';
import { pathThrough } from './table-rails';

/** The cue ball's way after one stroke of a fan, px. */
export interface FanPath {
  readonly hit: FanPlay['hit'];
  readonly path: string;
  readonly end: Point;
  readonly endKind: Outcome['kind'];
  /** Where its letter stands; null where no room is left. */
  readonly label: Label | null;
  /** Whether the letter stands so far off that a line has to lead to it. */
  readonly isLed: boolean;
}

/** Straight pieces to a phase: it bends little in one. */
const STEPS = 14;

/** Misses first, so that what goes is drawn over them, the true hit last of all. */
const ORDER: readonly FanPlay['hit'][] = ['missed-thin', 'missed-full', 'thin', 'full', 'true'];

/** @param keepOff what letters must not stand on, beside the ends themselves */
export function layOutFan(
  plays: readonly FanPlay[],
  map: TableMap,
  canvas: Canvas,
  keepOff: readonly Circle[],
): readonly FanPath[] {
  const bare = ORDER.flatMap((hit) => {
    const play = plays.find((one) => one.hit === hit);
    const run = play?.play.balls[0];
    return run ? [pathOf(hit, run, map)] : [];
  });
  const ends = bare.map(({ end }) => ({ cx: end.x, cy: end.y, r: MARK_PX }));
  const taken = [...keepOff, ...ends].map(boxAround);
  const labels = new Map(
    [...bare].reverse().map((path) => [path, placeLetter(path.end, canvas, taken)]),
  );
  return bare.map((path) => ({ ...path, ...(labels.get(path) ?? NOWHERE) }));
}

function pathOf(
  hit: FanPlay['hit'],
  { outcome, phases, from }: FanPlay['play']['balls'][number],
  { toPoint }: TableMap,
) {
  return {
    hit,
    path: pathThrough([from, ...phases.flatMap(spotsOf)].map(toPoint)),
    end: toPoint(endOf(outcome, phases, from)),
    endKind: outcome.kind,
  };
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

/** Half of the mark at a path's end, px. */
const MARK_PX = 5;
/** How far off a letter may stand, in heights of text: the nearer the better. */
const RINGS = [1, 1.7, 2.5, 3.5];
/** To the right first, then left, above, below and between. */
const TURNS = [0, 4, 6, 2, 7, 1, 5, 3];

type Placed = Pick<FanPath, 'label' | 'isLed'>;
const NOWHERE: Placed = { label: null, isLed: false };

/** As near to a point as there is room, within the canvas and off all that is taken. */
function placeLetter({ x, y }: Point, { widthPx, heightPx, textPx }: Canvas, taken: Box[]): Placed {
  const r = textPx / 2;
  for (const ring of RINGS) {
    for (const turn of TURNS) {
      const [cx, cy] = [
        x + ring * textPx * Math.cos((turn * Math.PI) / 4),
        y + ring * textPx * Math.sin((turn * Math.PI) / 4),
      ];
      const box = boxAround({ cx, cy, r });
      const isWithin =
        box.left >= 0 && box.right <= widthPx && box.top >= 0 && box.bottom <= heightPx;
      if (!isWithin || taken.some((other) => overlap(box, other))) continue;
      taken.push(box);
      return { label: { x: cx, y: cy + textPx * 0.35, anchor: 'middle' }, isLed: ring > 1 };
    }
  }
  return NOWHERE;
}

function boxAround({ cx, cy, r }: Circle): Box {
  return { left: cx - r, right: cx + r, top: cy - r, bottom: cy + r };
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
