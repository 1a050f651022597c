import { describe, expect, it } from 'vitest';
import { READING_NAMES } from '../../../../../src/engine/fit/trials/trial';
import {
  shotsToDo,
  TRIAL_NAMES,
  TRIALS,
  type TrialName,
} from '../../../../../src/engine/fit/trials/trials';
import { DEFAULT_KIT } from '../../../../../src/engine/kit/kit';

/** What can be read where, by what is left on the table or on a watch (common practice, no source). */
const READ: { readonly [T in TrialName]: readonly string[] } = {
  line: ['landingM'],
  curve: ['timeS', 'landingM'],
  stop: ['cueBallM', 'objectBallM'],
  throw: ['objectLandingM'],
  coast: ['timeS'],
  pivot: ['bridgeM'],
  speed: ['runM'],
  rebound: ['timeS', 'runM'],
  angle: ['upM'],
};

describe.each(TRIAL_NAMES)('the trial %s', (name) => {
  const trial = TRIALS[name];

  it('goes by its name, and reads what it leaves to be read', () => {
    expect(trial.name).toBe(name);
    expect(trial.readings.map((reading) => reading.name)).toEqual(READ[name]);
  });

  it('reads no closer than a tape or a thumb can, and well enough to be of use', () => {
    for (const { name: reading, sd, isShare } of trial.readings) {
      const [least, most] = isShare || reading === 'timeS' ? [0.02, 0.2] : [0.001, 0.02];
      expect(sd).toBeGreaterThan(least);
      expect(sd).toBeLessThan(most);
    }
  });

  it('predicts each of its readings for its own shots', () => {
    const bed = { lengthM: 2.54, ballRadiusM: DEFAULT_KIT.ballRadiusM };
    const shots = shotsToDo(bed).filter((shot) => shot.trial === name);
    expect(shots.length).toBeGreaterThan(1);
    for (const { stroke, setup } of shots) {
      const predicted = trial.predict(DEFAULT_KIT, { ...stroke, aimRad: 0 }, setup);
      for (const reading of READ[name]) expect(predicted).toHaveProperty(reading);
      expect(Object.values(predicted ?? {}).every(Number.isFinite)).toBe(true);
    }
  });
});

describe('the trials', () => {
  it('read, between them, all that can be read', () => {
    const read = TRIAL_NAMES.flatMap((name) => TRIALS[name].readings.map((spec) => spec.name));
    expect([...new Set(read)].sort()).toEqual([...READING_NAMES].sort());
  });
});
