import { describe, expect, it } from 'vitest';
import { shotsToDo, TRIALS } from '../../src/engine/fit/trials/trials';
import { DEFAULT_KIT } from '../../src/engine/kit/kit';
import { readTrial } from './reference/read-trial';

/** A kit that leaves nothing out: a tilted bed, a heavy cue ball. */
const KIT = {
  ...DEFAULT_KIT,
  cueBallMassRatio: 1.02,
  bedSlope: { alongM_per_M: 0.0003, rightM_per_M: -0.0002 },
};
const SHOTS = shotsToDo({ lengthM: 2.54, ballRadiusM: 0.028575 }).filter(
  ({ trial }) => trial !== 'pivot' && trial !== 'speed',
);

describe('what trials are expected to read', () => {
  it.each(['line', 'curve', 'stop', 'throw', 'coast'] as const)(
    'agrees with the equations of motion, integrated by a library: %s',
    (name) => {
      const shots = SHOTS.filter(({ trial }) => trial === name);
      expect(shots.length).toBeGreaterThan(1);
      for (const shot of shots) {
        const stroke = { aimRad: 0.004, ...shot.stroke };
        const read = readTrial(shot, stroke, KIT, false);
        const predicted = TRIALS[name].predict(KIT, stroke, shot.setup);
        for (const { name: reading, sd } of TRIALS[name].readings) {
          const apart = (read?.[reading] ?? Number.NaN) - (predicted?.[reading] ?? Number.NaN);
          expect(Math.abs(apart), `${reading} of ${JSON.stringify(shot)}`).toBeLessThan(sd / 100);
        }
      }
    },
  );
});
