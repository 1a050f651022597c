import { describe, expect, it } from 'vitest';
import { layOutFan, layOutSpread } from '../../../src/diagram/table-fan';
import { layOutTable } from '../../../src/diagram/table-map';
import { boxAround } from '../../../src/diagram/table-words';
import { DEFAULT_KIT } from '../../../src/engine/kit/kit';
import type { FanPlay } from '../../../src/engine/plan/ranked-way';
import { playTable } from '../../../src/engine/table/play-table';
import { SHAPE } from '../ui/choose/invented-choose';

const CANVAS = { widthPx: 300, heightPx: 560, textPx: 13 };
const MAP = layOutTable(SHAPE, CANVAS);
const FROM = { xM: 0.2, yM: -0.9 };

/** A lone cue ball played at an angle. */
function played(hit: FanPlay['hit'], aimRad: number, speedMps: number): FanPlay {
  const stroke = { aimRad, side: 0, height: 0, elevationRad: 0.05, speedMps };
  const play = playTable([FROM], stroke, DEFAULT_KIT, SHAPE);
  if (!play.ok) throw new Error(play.reason);
  return { hit, aimRad, play };
}

const layOut = (plays: readonly FanPlay[]) => layOutFan(plays, MAP, CANVAS, []);

describe('a fan of strokes', () => {
  it('begins at the cue ball and ends where it rests', () => {
    const play = played('true', -0.1, 1);
    const [path] = layOut([play]);
    const { x, y } = MAP.toPoint(FROM);
    expect(path?.path.startsWith(`M${x.toFixed(1)} ${y.toFixed(1)}L`)).toBe(true);
    const outcome = play.play.balls[0]?.outcome;
    expect(outcome?.kind).toBe('rests');
    if (outcome?.kind !== 'rests') return;
    expect(path?.end).toEqual(MAP.toPoint(outcome));
  });

  it('ends in the hole where the cue ball is pocketed', () => {
    const hole = SHAPE.pockets.find(({ name }) => name === 'near-right')?.drop ?? { x: 0, y: 0 };
    const aimRad = Math.atan2(hole.x - FROM.xM, hole.y - FROM.yM);
    const [path] = layOut([played('thin', aimRad, 1)]);
    const drop = MAP.toPoint({ xM: hole.x, yM: hole.y });
    expect(path?.endKind).toBe('pocketed');
    const awayM = Math.hypot((path?.end.x ?? 0) - drop.x, (path?.end.y ?? 0) - drop.y) / MAP.pxPerM;
    expect(awayM).toBeLessThan(0.1159);
  });

  it('draws the true hit last, over all others', () => {
    const plays = [
      played('true', 0, 1),
      played('missed-thin', 0.1, 1),
      played('full', -0.05, 1),
      played('thin', 0.05, 1),
    ];
    expect(layOut(plays).map(({ hit }) => hit)).toEqual(['missed-thin', 'thin', 'full', 'true']);
  });

  it('keeps its letters off one another, the ends and the balls though all end in one place', () => {
    const hits = ['true', 'thin', 'full', 'missed-thin', 'missed-full'] as const;
    const plays = hits.map((hit) => played(hit, 0, 1));
    const [end] = layOut(plays).map((path) => path.end);
    if (!end) throw new Error('there is an end');
    const ball = { cx: end.x + 14, cy: end.y, r: 9 };
    const paths = layOutFan(plays, MAP, CANVAS, [boxAround(ball)]);
    const spots = paths.map(({ label }) => label ?? { x: Number.NaN, y: Number.NaN });
    for (const [index, { x, y }] of spots.entries()) {
      const middle = y - 0.35 * CANVAS.textPx;
      const apart = (to: { x: number; y: number }) =>
        Math.max(Math.abs(x - to.x), Math.abs(middle - to.y));
      expect(apart(end)).toBeGreaterThanOrEqual(CANVAS.textPx / 2 + 5);
      expect(apart({ x: ball.cx, y: ball.cy })).toBeGreaterThanOrEqual(CANVAS.textPx / 2 + ball.r);
      for (const other of spots.slice(index + 1)) {
        const gap = Math.max(Math.abs(x - other.x), Math.abs(y - other.y));
        expect(gap).toBeGreaterThanOrEqual(CANVAS.textPx);
      }
    }
    expect(paths.filter(({ isLed }) => isLed).length).toBeGreaterThan(0);
  });

  it('leads no line to a letter that stands beside its end', () => {
    expect(layOut([played('true', 0, 1)])[0]).toMatchObject({ isLed: false });
  });
});

describe('where the cue ball mostly rests', () => {
  it('is a dot for each stroke and a ring a deviation about the middle', () => {
    const places = [
      { xM: 0, yM: 0 },
      { xM: 0.2, yM: 0 },
    ];
    const view = layOutSpread({ xM: 0.1, yM: 0, sdM: 0.1, places }, MAP);
    expect(view?.dots).toHaveLength(2);
    const [one, two] = view?.dots ?? [];
    expect(((two?.x ?? 0) - (one?.x ?? 0)) / 2).toBeCloseTo(view?.ring?.r ?? 0, 9);
  });

  it('has no ring where that would be wider than the table', () => {
    const places = [{ xM: 0, yM: 0 }];
    expect(layOutSpread({ xM: 0, yM: 0, sdM: 0.7, places }, MAP)?.ring).toBeNull();
  });

  it('is nothing where no stroke left it on the table', () => {
    expect(layOutSpread({ xM: 0, yM: 0, sdM: 0, places: [] }, MAP)).toBeNull();
  });
});
