import { describe, expect, it } from 'vitest';
import { play } from '../../../../src/engine/direct/contact';
import { layoutOf } from '../../../../src/engine/direct/layout';
import { type Shot, strokeOf } from '../../../../src/engine/direct/shot';
import { solveAim } from '../../../../src/engine/direct/solve-aim';
import { type TracePoint, traceCueBall } from '../../../../src/engine/direct/trace-cue-ball';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';
import { endState, newPlace, placeAt } from '../../../../src/engine/motion/phase';
import { type Query, randomQuery } from '../../../harness/random-shots';
import { seededRandom } from '../../../harness/seeded-random';

const MASSE: Shot = {
  distanceM: 0.8,
  cutRad: 0.2,
  side: 0.3,
  height: -0.1,
  elevationRad: 0.5,
  speedMps: 2,
};

function solvedQueries(count: number): (Query & { readonly aimRad: number })[] {
  const random = seededRandom(count);
  const found: (Query & { readonly aimRad: number })[] = [];
  while (found.length < count) {
    const query = randomQuery(random, found.length % 2 === 0 ? 0 : 0.003);
    const answer = solveAim(query.shot, query.kit);
    if (answer.ok) found.push({ ...query, aimRad: answer.aimRad });
  }
  return found;
}

describe('the traced path', () => {
  const queries = solvedQueries(150);

  it('runs from the cue ball’s start to the touch of the object ball', () => {
    for (const { shot, kit, aimRad } of queries) {
      const points = traceCueBall(shot, kit, aimRad, 40);
      expect(points[0]).toMatchObject({ xM: 0, yM: 0, heightM: 0 });
      const layout = layoutOf(shot, kit.ballRadiusM);
      const gaps = points.map(
        ({ xM, yM, heightM }) =>
          Math.hypot(layout.objectXM - xM, layout.objectYM - yM, heightM) - layout.reachM,
      );
      expect(gaps.at(-1)).toBeCloseTo(0, 11);
      expect(Math.min(...gaps)).toBeGreaterThan(-1e-11);
    }
  });

  it('goes forward in time: each point lies on its phase, a step after the one before', () => {
    for (const { shot, kit, aimRad } of queries) {
      const points = [...traceCueBall(shot, kit, aimRad, 25)];
      const { journey } = play(strokeOf(shot, aimRad), layoutOf(shot, kit.ballRadiusM), kit);
      const place = newPlace();
      for (const phase of journey.phases) {
        const share = (25 * phase.durationS) / journey.endS;
        const steps = Math.max(1, Math.round(share));
        for (let step = 0; step <= steps; step++) {
          placeAt(phase, (phase.durationS * step) / steps, place);
          expect(points.shift()).toEqual({
            xM: place.xM,
            yM: place.yM,
            heightM: place.zM,
            motion: phase.motion,
          });
        }
      }
      expect(points).toEqual([]);
    }
  });

  it('has no jump between its phases', () => {
    for (const { shot, kit, aimRad } of queries) {
      const points = traceCueBall(shot, kit, aimRad, 60);
      const hops = points.flatMap((now, index) => {
        const before = points[index - 1];
        const joins = before !== undefined && before.motion !== now.motion;
        return joins ? [Math.hypot(now.xM - before.xM, now.yM - before.yM)] : [];
      });
      for (const hop of hops) expect(hop).toBeLessThan(1e-9);
    }
  });

  it('gives about as many points as asked, and both ends of a phase at the least', () => {
    const sizes = [1, 10, 100].map(
      (samples) => traceCueBall(MASSE, DEFAULT_KIT, 0, samples).length,
    );
    const phases = play(strokeOf(MASSE, 0), layoutOf(MASSE, DEFAULT_KIT.ballRadiusM), DEFAULT_KIT)
      .journey.phases;
    expect(sizes[0]).toBe(2 * phases.length);
    expect(sizes[2]).toBeGreaterThan(95);
    expect(sizes[2]).toBeLessThan(105 + 2 * phases.length);
  });
});

describe('a path that touches nothing', () => {
  const away: Shot = { ...MASSE, speedMps: 0.6 };
  const last = (points: readonly TracePoint[]) => points.at(-1);

  it('ends where the ball comes to rest', () => {
    const { journey } = play(
      strokeOf(away, -1),
      layoutOf(away, DEFAULT_KIT.ballRadiusM),
      DEFAULT_KIT,
    );
    const end = journey.phases.at(-1);
    expect(journey.met).toBeNull();
    if (end === undefined) throw new Error('no path');
    const { xM, yM } = endState(end);
    expect(last(traceCueBall(away, DEFAULT_KIT, -1, 30))).toMatchObject({
      xM: expect.closeTo(xM, 12),
      yM: expect.closeTo(yM, 12),
      heightM: 0,
      motion: 'rolling',
    });
  });

  it('is empty where the engine cannot take the query', () => {
    expect(traceCueBall({ ...MASSE, speedMps: 99 }, DEFAULT_KIT, 0, 30)).toEqual([]);
    expect(traceCueBall(MASSE, DEFAULT_KIT, 7, 30)).toEqual([]);
    expect(traceCueBall(MASSE, { ...DEFAULT_KIT, massRatio: 0 }, 0, 30)).toEqual([]);
  });
});
