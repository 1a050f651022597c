import { describe, expect, it } from 'vitest';
import { directCut } from '../../../../src/engine/goal/goal';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';
import { leastElevation } from '../../../../src/engine/lie/least-elevation';
import { bearing, wrapped } from '../../../../src/engine/numerics/angle';
import { fanOf } from '../../../../src/engine/plan/fan-of';
import { gridFrom } from '../../../../src/engine/plan/grid-from';
import { placesOf, strokeAt } from '../../../../src/engine/plan/option-grid';
import { pathCheck } from '../../../../src/engine/plan/path-in-the-way';
import { orderWays, rankWays, waysToRefine } from '../../../../src/engine/plan/rank-ways';
import type { RankedWay } from '../../../../src/engine/plan/ranked-way';
import { solveOption, taskOf } from '../../../../src/engine/plan/solve-option';
import type { TablePlay } from '../../../../src/engine/table/table-play';
import { askPosition, NINE_FOOT, someOptions } from '../../../harness/invented-positions';

const RAD = Math.PI / 180;
/** A thin cut over most of a table (invented): 66° and 1.9 m. */
const BALLS = [
  { name: 'cue' as const, xM: -0.5, yM: -0.75 },
  { name: 3, xM: -0.04, yM: 1.1 },
];
const GOAL = directCut(3, 'far-right');
const thin = askPosition(BALLS, GOAL);
const { question, scene } = thin.asked;
const options = someOptions(thin, 3);
const ranked = [...rankWays(thin.asked, options)];
const ways = orderWays(ranked);

/** The cue ball's speed just after it met the object ball, and how far that turned it. */
function afterMeeting({ balls, events }: TablePlay) {
  const metS = events.find(({ kind }) => kind === 'hits-ball')?.timeS ?? Number.NaN;
  const after = balls[0]?.phases.find(({ startS }) => startS === metS)?.start;
  if (after === undefined) throw new Error('the balls do not meet');
  const turned = wrapped(bearing(after.vx, after.vy) - thin.shot.headingRad);
  return { speedMps: Math.hypot(after.vx, after.vy), turnedRad: Math.abs(turned) };
}

describe('the ways to play a long thin cut', () => {
  it('is one', () => {
    expect(thin.shot.distanceM).toBeGreaterThan(1.8);
    expect(thin.shot.cutRad / RAD).toBeGreaterThan(50);
  });

  // Common practice, no source: the shot without side, rolled, is the easiest.
  it('begin with the cue ball rolling in, struck without side', () => {
    expect(ways[0]?.way).toMatchObject({ side: 'none', arrival: 'roll' });
    const percents = ways.map(({ chance, clean }) => Math.round(100 * chance * clean));
    expect([...percents].sort((a, b) => b - a)).toEqual(percents);
  });

  // Common practice, no source: more side over more distance goes less often.
  it('go less often the more side is used', () => {
    const chanceAt = (side: number) =>
      Math.max(
        ...options.filter(({ stroke }) => stroke.side === side).map(({ chance }) => chance.share),
      );
    const sides = [...new Set(options.map(({ stroke }) => stroke.side))].sort((a, b) => a - b);
    const right = sides.filter((side) => side >= 0).map(chanceAt);
    const left = sides
      .filter((side) => side <= 0)
      .map(chanceAt)
      .reverse();
    for (const chances of [right, left]) {
      expect(chances.length).toBeGreaterThan(2);
      expect([...chances].sort((a, b) => b - a)).toEqual(chances);
    }
  });

  // Common practice, no source: possible, hard, and aimed well outside the ghost ball.
  it('have an inside drag with a raised cue among them, aimed outside the ghost ball', () => {
    const stroke = { side: 0.35, height: -0.3, elevationRad: 20 * RAD, speedMps: 3.4 };
    const drag = solveOption(question, taskOf(question), stroke, 0);
    const [best] = ways;
    if (drag === null || best === undefined) throw new Error('no such option');
    // Cut to the right, outside the ghost ball is on its left.
    expect(drag.stroke.aimRad / RAD).toBeLessThan(-0.5);
    expect(drag.chance.share).toBeGreaterThan(0.01);
    expect(drag.chance.share).toBeLessThan(best.option.chance.share * 0.8);
  });

  it('tell what makes them hard, where the cue ball rests and what the stroke forgives', () => {
    expect(ways.length).toBeGreaterThan(3);
    expect(ways.length).toBeLessThanOrEqual(12);
    for (const { rest, windows, scratch, clean, goodPosition, option, hardest } of ways) {
      expect(rest.places.length).toBeGreaterThan(0);
      for (const { xM, yM } of rest.places) {
        expect(Math.abs(xM)).toBeLessThan(0.7);
        expect(Math.abs(yM)).toBeLessThan(1.35);
      }
      const xs = rest.places.map(({ xM }) => xM);
      expect(rest.xM).toBeGreaterThanOrEqual(Math.min(...xs));
      expect(rest.xM).toBeLessThanOrEqual(Math.max(...xs));
      expect(windows?.aimRad.low.value).toBeLessThan(option.stroke.aimRad);
      expect(windows?.aimRad.high.value).toBeGreaterThan(option.stroke.aimRad);
      expect(scratch).toBeGreaterThanOrEqual(0);
      expect(scratch).toBeLessThanOrEqual(1);
      expect(clean).toBeGreaterThan(0);
      expect(clean).toBeLessThanOrEqual(1);
      expect(goodPosition).toBeNull();
      expect(option.chance.sds[hardest]).toBe(Math.max(...Object.values(option.chance.sds)));
    }
  });

  it('are the same every time', () => {
    expect([...rankWays(thin.asked, options)].slice(0, 2)).toEqual(ranked.slice(0, 2));
  });
});

describe('the fan of a way', () => {
  const [best] = ways;
  if (best === undefined) throw new Error('no way');
  const fan = fanOf(question, scene, best.option);
  const playOf = (hit: string) => {
    const found = fan.find((one) => one.hit === hit);
    if (found === undefined) throw new Error(`no ${hit}`);
    return found;
  };

  it('goes when true, and misses beyond either edge', () => {
    const did = (hit: string) => playOf(hit).play.balls[1]?.outcome;
    expect(fan).toHaveLength(5);
    expect(did('true')).toMatchObject({ kind: 'pocketed', pocket: 'far-right' });
    for (const hit of ['missed-thin', 'missed-full']) {
      const outcome = did(hit);
      expect(outcome?.kind === 'pocketed' && outcome.pocket === 'far-right').toBe(false);
    }
  });

  it('points further left the thinner a ball is cut to the right', () => {
    const aims = ['missed-thin', 'thin', 'true', 'full', 'missed-full'].map(
      (hit) => playOf(hit).aimRad,
    );
    expect([...aims].sort((a, b) => a - b)).toEqual(aims);
  });

  // Common practice, no source: thin keeps more of the cue ball's speed, full takes it.
  it('sends the cue ball on faster and more forward the thinner it hits', () => {
    const [thinnest, middle, fullest] = ['missed-thin', 'true', 'missed-full'].map((hit) =>
      afterMeeting(playOf(hit).play),
    );
    if (!thinnest || !middle || !fullest) throw new Error('no meeting');
    expect(thinnest.speedMps).toBeGreaterThan(middle.speedMps);
    expect(middle.speedMps).toBeGreaterThan(fullest.speedMps);
    expect(thinnest.turnedRad).toBeLessThan(middle.turnedRad);
    expect(middle.turnedRad).toBeLessThan(fullest.turnedRad);
  });
});

describe('ordering', () => {
  const [one, other] = ranked;
  if (one === undefined || other === undefined) throw new Error('no ways');
  const like = (of: RankedWay, changed: Partial<RankedWay>): RankedWay => ({ ...of, ...changed });

  it('leaves out what another way of its kind betters at the same place', () => {
    const worse = like(one, { chance: one.chance / 2 });
    expect(orderWays([worse, one])).toEqual([one]);
    const elsewhere = like(worse, { rest: { ...one.rest, xM: one.rest.xM + 0.11 } });
    expect(orderWays([elsewhere, one])).toEqual([one, elsewhere]);
    const drawn = like(worse, { way: { ...one.way, side: 'inside' } });
    expect(orderWays([drawn, one])).toEqual([one, drawn]);
  });

  it('puts what goes more often behind what goes more often without a scratch', () => {
    const scratching = like(one, { chance: 0.6, clean: 0.5 });
    const safe = like(other, {
      chance: 0.4,
      clean: 1,
      way: { ...other.way, side: 'inside' },
    });
    expect(orderWays([scratching, safe])).toEqual([safe, scratching]);
  });

  it('counts position where there is a zone', () => {
    const sure = like(one, { chance: 0.6, goodPosition: 0.2 });
    const placed = like(other, {
      chance: 0.4,
      goodPosition: 0.9,
      way: { ...other.way, side: 'inside' },
    });
    expect(orderWays([sure, placed])).toEqual([placed, sure]);
  });
});

describe('ways to a zone', () => {
  it('are chosen for where they leave the cue ball', () => {
    const [best] = ways;
    if (best === undefined) throw new Error('no way');
    // Where some softer way's cue ball comes to rest.
    const { xM, yM } = [...ways].sort((a, b) => a.rest.sdM - b.rest.sdM)[0]?.rest ?? best.rest;
    const zone = { xM, yM, radiusM: 0.25 };
    const zoned = { ...thin.asked, scene: { ...scene, zone } };
    const toZone = orderWays([...rankWays(zoned, options)]);
    const worth = ({ chance, goodPosition }: RankedWay) => chance * (goodPosition ?? 0);
    const shareIn = ({ rest }: RankedWay) =>
      rest.places.filter((place) => Math.hypot(place.xM - xM, place.yM - yM) <= 0.25).length /
      rest.places.length;
    const unplaced = Math.max(...ways.map((way) => way.chance * shareIn(way)));
    expect(worth(toZone[0] ?? best)).toBeGreaterThan(0.9 * unplaced);
    expect(toZone[0]?.goodPosition).toBeGreaterThan(0.3);
    const worths = toZone.map(worth);
    expect([...worths].sort((a, b) => b - a)).toEqual(worths);
  });
});

describe('ways past a ball in the line', () => {
  it('hold none that would hit it', () => {
    const straight = [
      ...BALLS,
      // Half-way to the ghost ball.
      { name: 5, xM: -0.29, yM: 0.15 },
    ];
    const blocked = askPosition(straight, GOAL);
    expect(blocked.shot.inTheWay).toEqual([{ mover: 'cue', what: 5 }]);
    const open = someOptions(blocked, 4).filter(pathCheck(blocked.asked));
    const found = waysToRefine(blocked.asked, open);
    for (const way of [
      ...rankWays(
        blocked.asked,
        found.map(({ option }) => option),
      ),
    ]) {
      const fan = fanOf(blocked.asked.question, blocked.asked.scene, way.option);
      const first = fan[0]?.play.events.find(({ kind }) => kind === 'hits-ball');
      expect(first).toMatchObject({ ball: 0, other: 1 });
    }
    expect(found.length).toBeLessThan(waysToRefine(thin.asked, options).length);
  });
});

describe('the grid from a position', () => {
  it('holds at each height only strokes that clear the rail behind', () => {
    const cueBall = { x: 0, y: -1.2 };
    const balls = [
      { name: 'cue' as const, xM: cueBall.x, yM: cueBall.y },
      { name: 3, xM: 0.2, yM: 0.3 },
    ];
    const grid = gridFrom(balls, 0, NINE_FOOT, DEFAULT_KIT);
    const strokes = Array.from({ length: placesOf(grid) }, (_, place) => strokeAt(grid, place));
    const held = strokes.flatMap((stroke) => stroke ?? []);
    const leastAt = (height: number) =>
      leastElevation(cueBall, 0, [], NINE_FOOT, DEFAULT_KIT, { side: 0, height }).elevationRad;
    expect(held.length).toBeGreaterThan(1000);
    for (const { height, elevationRad } of held) {
      expect(elevationRad).toBeGreaterThanOrEqual(leastAt(height));
    }
    expect(held.some(({ height }) => height > 0.2)).toBe(true);
    expect(held.some(({ height }) => height < -0.3)).toBe(false);
  });
});
