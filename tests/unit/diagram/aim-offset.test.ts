import { describe, expect, it } from 'vitest';
import { aimOffsetM } from '../../../src/diagram/aim-offset';
import { solveAim } from '../../../src/engine/direct/solve-aim';
import { DEFAULT_KIT } from '../../../src/engine/kit/kit';
import { DEFAULT_SHOT } from '../../../src/store/default-desk';

describe('where a line of aim passes', () => {
  it.each([0.7, -0.4, 0])(
    'is what the engine says of its own aim, at a cut of %f rad',
    (cutRad) => {
      const shot = { ...DEFAULT_SHOT, cutRad };
      const answer = solveAim(shot, DEFAULT_KIT);
      if (!answer.ok) throw new Error(answer.reason);
      const { ballRadiusM } = DEFAULT_KIT;
      const at = (lead: 'ghost-ball' | 'object-ball') =>
        aimOffsetM(shot, ballRadiusM, lead, answer.aimRad);
      expect(at('ghost-ball')).toBeCloseTo(answer.aimOffsetM, 12);
      expect(at('object-ball')).toBeCloseTo(answer.aimOnObjectBallM, 12);
    },
  );
});
