import { describe, expect, it } from 'vitest';
import { restingAt } from '../../../../src/engine/ball/ball-state';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';
import { flight } from '../../../../src/engine/motion/flight';
import { objectBallAtRest } from '../../../../src/engine/motion/object-ball-at-rest';
import { type Motion, newPlace, type Phase, placeAt } from '../../../../src/engine/motion/phase';
import { roll } from '../../../../src/engine/motion/roll';
import { between, type Random, seededRandom } from '../../../harness/seeded-random';
import { anyKit, anyPhase } from '../ball/random-balls';

interface Scene {
  readonly phase: Phase;
  readonly xM: number;
  readonly yM: number;
}

/** How far the two balls' surfaces are apart, m; below 0 where they would overlap. */
function gapAt({ phase, xM, yM }: Scene, timeS: number): number {
  const place = newPlace();
  placeAt(phase, timeS, place);
  return Math.hypot(xM - place.xM, yM - place.yM, place.zM) - 2 * phase.radiusM;
}

/** An object ball beside some point of the path: full on it, grazing it, or just out of its way. */
function anyScene(random: Random, motion: Motion, slope: number): Scene {
  for (;;) {
    const phase = anyPhase(random, motion, anyKit(random, slope));
    const place = newPlace();
    placeAt(phase, phase.durationS * random(), place);
    const speed = Math.hypot(place.vx, place.vy);
    const aside = between(random, -2.1, 2.1) * phase.radiusM;
    const xM = place.xM + (aside * place.vy) / speed;
    const yM = place.yM - (aside * place.vx) / speed;
    const scene = { phase, xM, yM };
    if (gapAt(scene, 0) > 1e-4) return scene;
  }
}

const LOOKS = 3000;

/** The first of many moments at which the balls would overlap, s; Infinity: never seen to. */
function firstOverlap(scene: Scene): number {
  for (let look = 0; look <= LOOKS; look++) {
    const timeS = (scene.phase.durationS * look) / LOOKS;
    if (gapAt(scene, timeS) < -1e-10) return timeS;
  }
  return Number.POSITIVE_INFINITY;
}

describe.each([0, 0.008])('first touch on a bed tilted up to %d', (slope) => {
  it.each(['sliding', 'rolling', 'flying'] as const)(
    '%s: is on time and never missed',
    (motion) => {
      const random = seededRandom(1000 * slope + motion.length);
      let touches = 0;
      for (let count = 0; count < 250; count++) {
        const scene = anyScene(random, motion, slope);
        const timeS = objectBallAtRest(scene.xM, scene.yM).touchTime(scene.phase);
        const overlapS = firstOverlap(scene);
        expect(timeS).toBeLessThanOrEqual(overlapS);
        if (timeS === Number.POSITIVE_INFINITY) continue;
        touches++;
        expect(timeS).toBeGreaterThan(0);
        expect(timeS).toBeLessThanOrEqual(scene.phase.durationS);
        expect(Math.abs(gapAt(scene, timeS))).toBeLessThan(2e-12);
      }
      expect(touches).toBeGreaterThan(80);
    },
  );
});

describe('a graze by a ball about to rest on a tilted bed', () => {
  it('is not missed, however slow and thin', () => {
    const random = seededRandom(61);
    const place = newPlace();
    for (let count = 0; count < 4000; count++) {
      const phase = anyPhase(random, 'rolling', anyKit(random, 0.012));
      const grazeS = phase.durationS * (1 - Math.exp(between(random, -9, -1)));
      placeAt(phase, grazeS, place);
      const speed = Math.hypot(place.vx, place.vy);
      const aside = 2 * phase.radiusM * (1 - Math.exp(between(random, -18, -8)));
      const xM = place.xM + (aside * place.vy) / speed;
      const yM = place.yM - (aside * place.vx) / speed;
      if (gapAt({ phase, xM, yM }, 0) < 1e-4) continue;
      expect(objectBallAtRest(xM, yM).touchTime(phase)).toBeLessThan(grazeS);
    }
  });
});

describe('objectBallAtRest', () => {
  const rolling = roll({ ...restingAt(0, 0), vy: 1 }, 0, DEFAULT_KIT);
  const reachM = 2 * DEFAULT_KIT.ballRadiusM;

  it('knows a graze from a miss by a billionth of a millimetre', () => {
    expect(objectBallAtRest(reachM - 1e-12, 1).touchTime(rolling)).toBeLessThan(2);
    expect(objectBallAtRest(reachM + 3e-12, 1).touchTime(rolling)).toBe(Number.POSITIVE_INFINITY);
  });

  it('is met where the roll only just reaches, and not where it only just does not', () => {
    const endM = rolling.start.vy ** 2 / (2 * DEFAULT_KIT.rollFriction * 9.80665);
    const reached = objectBallAtRest(0, endM + reachM - 1e-9).touchTime(rolling);
    expect(reached).toBeLessThanOrEqual(rolling.durationS);
    expect(objectBallAtRest(0, endM + reachM + 1e-9).touchTime(rolling)).toBe(
      Number.POSITIVE_INFINITY,
    );
  });

  it('is flown over, and met on the way down', () => {
    const hop = flight({ ...restingAt(0, 0), vy: 1, vz: 1.5 }, 0, DEFAULT_KIT);
    expect(objectBallAtRest(0, hop.durationS / 2).touchTime(hop)).toBe(Number.POSITIVE_INFINITY);
    const timeS = objectBallAtRest(0, hop.durationS).touchTime(hop);
    expect(timeS).toBeGreaterThan(0.8 * hop.durationS);
    expect(timeS).toBeLessThan(hop.durationS);
  });

  it('is not met by a ball that leaves it, however near', () => {
    expect(objectBallAtRest(0, -reachM).touchTime(rolling)).toBe(Number.POSITIVE_INFINITY);
    expect(objectBallAtRest(0, -reachM - 1e-13).touchTime(rolling)).toBe(Number.POSITIVE_INFINITY);
  });

  it('is met at once by a ball that touches it and closes', () => {
    expect(objectBallAtRest(0, reachM).touchTime(rolling)).toBe(0);
  });
});
