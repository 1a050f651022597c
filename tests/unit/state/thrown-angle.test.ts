import { describe, expect, it } from 'vitest';
import { thrownAngleRad } from '../../../src/state/thrown-angle';
import { DEFAULT_SHOT } from '../../../src/store/default-desk';
import { answerTo } from './open-shot';

describe('the thrown angle', () => {
  it('is how far the object ball leaves off the line of centres, right plus', () => {
    const answer = answerTo(DEFAULT_SHOT);
    const arrival = { ...answer.arrival, directionRad: 0.1, cutRad: 0.3 };
    const objectBall = { speedMps: 1, directionRad: 0.35 };
    expect(thrownAngleRad({ ...answer, arrival, objectBall })).toBeCloseTo(-0.05, 12);
  });

  it('is none of a ball that stays', () => {
    const objectBall = { speedMps: 0, directionRad: null };
    expect(thrownAngleRad({ ...answerTo(DEFAULT_SHOT), objectBall })).toBeNull();
  });
});
