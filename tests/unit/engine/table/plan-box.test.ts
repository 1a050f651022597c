import { describe, expect, it } from 'vitest';
import { newPlace, placeAt } from '../../../../src/engine/motion/phase';
import {
  areApart,
  grown,
  isInside,
  phaseBox,
  pointBox,
} from '../../../../src/engine/table/plan-box';
import { seededRandom } from '../../../harness/seeded-random';
import { anyKit, anyPhase } from '../ball/random-balls';

const LOOKS = 200;
const SLACK_M = 1e-12;

describe.each([0, 0.008])('the rectangle around a phase, bed tilted up to %d', (slope) => {
  it.each(['sliding', 'rolling', 'flying'] as const)('%s: holds all of its path', (motion) => {
    const random = seededRandom(5);
    const place = newPlace();
    const outside: unknown[] = [];
    for (let count = 0; count < 100; count++) {
      const phase = anyPhase(random, motion, anyKit(random, slope));
      const box = grown(phaseBox(phase), SLACK_M);
      for (let look = 0; look <= LOOKS; look++) {
        placeAt(phase, (phase.durationS * look) / LOOKS, place);
        if (!isInside(pointBox(place.xM, place.yM), box)) outside.push({ phase, ...place });
      }
    }
    expect(outside).toEqual([]);
  });
});

describe('rectangles', () => {
  const unit = { minX: 0, maxX: 1, minY: 0, maxY: 1 };

  it('are apart where a gap along either axis is wider than asked', () => {
    expect(areApart(unit, pointBox(1.2, 0.5), 0.1)).toBe(true);
    expect(areApart(unit, pointBox(1.2, 0.5), 0.3)).toBe(false);
    expect(areApart(unit, pointBox(0.5, -0.2), 0.1)).toBe(true);
  });

  it('lie in one another only where all four sides do', () => {
    expect(isInside(pointBox(0.5, 1), unit)).toBe(true);
    expect(isInside(pointBox(0.5, 1.1), unit)).toBe(false);
  });
});
