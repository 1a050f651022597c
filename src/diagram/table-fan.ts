import { newPlace, type Phase, placeAt } from '../engine/motion/phase';
import type { FanPlay, RestSpread } from '../engine/plan/ranked-way';
import type { Outcome } from '../engine/table/table-play';
import type { Canvas, Circle, Label, Point } from './canvas';
import type { BedSpot } from './table-diamonds';
import type { TableMap } from './table-map';
import { pathThrough } from './table-rails';
import { aroundPoint, type Box, boxAround, placeWord } from './table-words';

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
  keepOff: readonly Box[],
): readonly FanPath[] {
  const bare = ORDER.flatMap((hit) => {
    const play = plays.find((one) => one.hit === hit);
    const run = play?.play.balls[0];
    return run ? [pathOf(hit, run, map)] : [];
  });
  const ends = bare.map(({ end }) => ({ cx: end.x, cy: end.y, r: MARK_PX }));
  const taken = [...keepOff, ...ends.map(boxAround)];
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
    path: pathThrough([from, ...phases.flatMap((phase) => spotsOf(phase))].map(toPoint)),
    end: toPoint(endOf(outcome, phases, from)),
    endKind: outcome.kind,
  };
}

/** Where a ball comes in a phase, the start left out. */
export function spotsOf(phase: Phase, durationS = phase.durationS): readonly BedSpot[] {
  const place = newPlace();
  return Array.from({ length: STEPS }, (_, step) => {
    placeAt(phase, (durationS * (step + 1)) / STEPS, place);
    return { xM: place.xM, yM: place.yM };
  });
}

/** A pocketed ball ends where its last piece does. */
function endOf(outcome: Outcome, phases: readonly Phase[], from: BedSpot): BedSpot {
  if (outcome.kind !== 'pocketed') return outcome;
  return phases.flatMap((phase) => spotsOf(phase)).at(-1) ?? from;
}

/** Half of the mark at a path's end, px. */
const MARK_PX = 5;

type Placed = Pick<FanPath, 'label' | 'isLed'>;
const NOWHERE: Placed = { label: null, isLed: false };
/** Farther off than this, in heights of text, a letter is led to. */
const BESIDE = 1.2;

/** As near to a point as there is room, within the canvas and off all that is taken. */
function placeLetter(point: Point, canvas: Canvas, taken: Box[]): Placed {
  const { textPx } = canvas;
  const label = placeWord('A', aroundPoint(point, 'A', textPx), canvas, taken);
  if (label === null) return NOWHERE;
  const awayPx = Math.hypot(label.x - point.x, label.y - textPx * 0.35 - point.y);
  return { label, isLed: awayPx > BESIDE * textPx };
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
