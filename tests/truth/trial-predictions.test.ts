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
  /** Of a reading's deviation. An engine's cushion is some ten-thousandths of the speed off. */
  const CLOSE = { line: 0.01, curve: 0.01, stop: 0.01, throw: 0.01, coast: 0.01 };
  const ALL_CLOSE = { ...CLOSE, rebound: 0.4, angle: 0.1 };

  it.each(Object.entries(ALL_CLOSE) as [keyof typeof ALL_CLOSE, number][])(
    'agrees with the equations of motion, integrated by a library: %s',
    (name, close) => {
      const shots = SHOTS.filter(({ trial }) => trial === name);
      expect(shots.length).toBeGreaterThan(1);
      for (const shot of shots) {
        const stroke = { aimRad: 0.004, ...shot.stroke };
        const read = readTrial(shot, stroke, KIT, false);
        const predicted = TRIALS[name].predict(KIT, stroke, shot.setup);
        for (const { name: reading, sd } of TRIALS[name].readings) {
          const apart = (read?.[reading] ?? Number.NaN) - (predicted?.[reading] ?? Number.NaN);
          expect(Math.abs(apart), `${reading} of ${JSON.stringify(shot)}`).toBeLessThan(sd * close);
        }
      }
    },
  );
});
