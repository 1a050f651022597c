import { describe, expect, it } from 'vitest';
import { USUAL_SPEEDS } from '../../../../../src/engine/fit/trials/set-up';
import { READING_RANGES, TRIAL_RANGES } from '../../../../../src/engine/fit/trials/trial';
import {
  shotsToDo,
  TRIAL_NAMES,
  TRIALS,
  type TrialShot,
} from '../../../../../src/engine/fit/trials/trials';
import { DEFAULT_KIT } from '../../../../../src/engine/kit/kit';
import { LEVEL_RAD } from '../../../../../src/engine/lie/least-elevation';
import { isWithin } from '../../../../../src/engine/numerics/range';
import { isBeyondMiscue } from '../../../../../src/engine/stroke/miscue-limit';

const R = DEFAULT_KIT.ballRadiusM;

/** Nose to nose: nine and eight feet (WPA), seven of one make in use (76 in), m. */
const LENGTHS = [2.54, 2.337, 1.93];

/** The same shot as a left-hander would see it in a mirror. */
function mirrored({ trial, stroke, setup }: TrialShot): TrialShot {
  // From the other end stays from the other end; 0 − makes no zero of the other sign.
  const headingRad = Math.abs(stroke.headingRad) === Math.PI ? Math.PI : 0 - stroke.headingRad;
  return {
    trial,
    stroke: { ...stroke, headingRad, side: 0 - stroke.side },
    setup: { ...setup, cutRad: 0 - setup.cutRad },
  };
}

describe.each(LENGTHS)('the shots to do on a table of %d m', (lengthM) => {
  const shots = shotsToDo({ lengthM, ballRadiusM: R });
  const of = (trial: string) => shots.filter((shot) => shot.trial === trial);

  it('are of every trial, and never the same twice', () => {
    for (const trial of TRIAL_NAMES) expect(of(trial).length).toBeGreaterThan(0);
    expect(new Set(shots.map((shot) => JSON.stringify(shot))).size).toBe(shots.length);
  });

  it('are what the engine accepts, and a chalked tip', () => {
    for (const { stroke, setup } of shots) {
      const { speedWord, ...figures } = stroke;
      for (const [name, value] of Object.entries({ ...figures, ...setup })) {
        expect(isWithin(TRIAL_RANGES[name as keyof typeof TRIAL_RANGES], value)).toBe(true);
      }
      expect(isBeyondMiscue(stroke.side, stroke.height)).toBe(false);
      expect(speedWord).not.toBeNull();
      expect(stroke.speedMps).toBe(speedWord === null ? 0 : USUAL_SPEEDS[speedWord]);
    }
  });

  it('are as many to the left as to the right: what a crooked aim adds cancels', () => {
    for (const shot of shots) expect(shots).toContainEqual(mirrored(shot));
  });

  it('have room on the table', () => {
    for (const { setup } of shots) {
      expect(setup.bedLengthM).toBe(lengthM);
      const balls = setup.gapM > 0 ? 4 * R : 2 * R;
      expect(setup.distanceM + setup.gapM + balls).toBeLessThan(lengthM);
    }
  });

  it('never have the cue lower than a bridge allows', () => {
    for (const { stroke } of shots) expect(stroke.elevationRad).toBeGreaterThanOrEqual(LEVEL_RAD);
  });

  it('cut a ball so that it runs along the table', () => {
    for (const { stroke, setup } of of('throw')) {
      expect(stroke.headingRad + setup.cutRad).toBeCloseTo(0, 12);
    }
  });

  it('coast both ways over the same stretch', () => {
    const ways = of('coast').map(({ stroke }) => stroke.headingRad);
    expect(ways).toEqual([0, Math.PI]);
    expect(new Set(of('coast').map(({ setup }) => setup.distanceM)).size).toBe(1);
  });

  it('stop a ball that starts from one place, at several gaps', () => {
    const places = of('stop').map(({ setup }) => setup.gapM + setup.distanceM);
    for (const place of places) expect(place).toBeCloseTo(places[0] ?? Number.NaN, 12);
    expect(new Set(of('stop').map(({ setup }) => setup.gapM)).size).toBe(of('stop').length);
  });

  it('leave what can be entered, with an ordinary kit', () => {
    for (const { trial, stroke, setup } of shots) {
      const read = TRIALS[trial].predict(DEFAULT_KIT, { ...stroke, aimRad: 0 }, setup);
      for (const { name } of TRIALS[trial].readings) {
        expect(isWithin(READING_RANGES[name], read?.[name])).toBe(true);
      }
    }
  });
});
