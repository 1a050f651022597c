import { describe, expect, it } from 'vitest';
import { predictRun } from '../../../src/engine/fit/trials/speed';
import { afterBed } from '../../../src/engine/impacts/bed-impulse';
import { strike } from '../../../src/engine/impacts/strike';
import { DEFAULT_KIT, type Kit } from '../../../src/engine/kit/kit';
import { rolledVelocity } from '../../../src/engine/motion/rolled-velocity';
import { formatQuantity } from '../../../src/units/format-number';
import { speedScale } from '../../../src/units/speed-unit';
import { lengthsRun, type RunBed, speedOfRun, TABLE_RUNS } from '../../../src/units/table-run';

const ROLL_FRICTIONS = [0.006, 0.01, 0.016];
const SPEEDS_MPS = Array.from({ length: 66 }, (_, at) => at / 5);

const bedOf = (kit: Partial<Kit>, tableLengthM = 2.54): RunBed => ({
  tableLengthM,
  kit: { ...DEFAULT_KIT, ...kit },
});

const NINE_FOOT = bedOf({});
const across = ({ tableLengthM, kit }: RunBed) => tableLengthM - 2 * kit.ballRadiusM;

/** What the engine makes of a stroke that sets the ball rolling at once, played from one end. */
function played(kit: Kit, bed: RunBed, struckMps: number) {
  const stroke = { aimRad: 0, side: 0, height: 0.4, elevationRad: 0, speedMps: struckMps };
  const setup = { distanceM: across(bed), gapM: 0, cutRad: 0, bedLengthM: bed.tableLengthM };
  const run = predictRun(kit, stroke, setup);
  if (run?.runM === undefined) throw new Error('the ball never stops');
  const rolling = rolledVelocity(afterBed(strike(stroke, kit), kit), kit.ballRadiusM);
  return { lengths: run.runM / across(bed), speedMps: rolling.vy };
}

describe('the lengths of a table that a ball runs', () => {
  it('are those of a uniform slowing where no cushion is met: v²/(2 μ g) metres', () => {
    const halfMps = lengthsRun(0.5, NINE_FOOT) * across(NINE_FOOT);
    expect(halfMps).toBeCloseTo(0.25 / (2 * DEFAULT_KIT.rollFriction * 9.80665), 9);
    expect(lengthsRun(0, NINE_FOOT)).toBe(0);
  });

  it.each(ROLL_FRICTIONS)(
    'are within 2 % those that the engine plays out, up to 3.5 m/s, at a roll friction of %s',
    (rollFriction) => {
      for (const slideFriction of [0.16, 0.2, 0.3]) {
        const kit = { ...DEFAULT_KIT, rollFriction, slideFriction };
        const bed = bedOf(kit);
        for (const struckMps of [0.5, 1, 1.5, 2, 2.5, 3, 3.5]) {
          const { lengths, speedMps } = played(kit, bed, struckMps);
          expect(Math.abs(lengthsRun(speedMps, bed) / lengths - 1)).toBeLessThan(0.02);
        }
      }
    },
  );

  it('are fewer off dead cushions, and off any that lose more at speed', () => {
    const { cushion } = DEFAULT_KIT;
    const of = (other: Partial<Kit['cushion']>) =>
      lengthsRun(4, bedOf({ cushion: { ...cushion, ...other } }));
    expect(of({ restitution: 0.85 })).toBeLessThan(of({}) - 0.1);
    expect(of({ lossPerMps: 0 })).toBeGreaterThan(of({}) + 0.1);
    expect(of({ lossFromMps: 3 })).toBeGreaterThan(of({}) + 0.05);
  });

  it.each([1, 2.54, 3.569])(
    'grow with speed on a table of %s m, and speed with them',
    (lengthM) => {
      for (const rollFriction of [0.001, 0.01, 0.1]) {
        for (const slideFriction of [0.02, 0.2, 1]) {
          const bed = bedOf({ rollFriction, slideFriction }, lengthM);
          const lengths = SPEEDS_MPS.map((speedMps) => lengthsRun(speedMps, bed));
          const back = lengths.map((run) => speedOfRun(run, bed));
          for (const [at, speedMps] of SPEEDS_MPS.entries()) {
            expect(back[at]).toBeCloseTo(speedMps, 6);
            if (at > 0) expect(lengths[at]).toBeGreaterThan(lengths[at - 1] ?? 0);
          }
        }
      }
    },
  );

  it('have no leap where a cushion is met', () => {
    for (const whole of [1, 2, 3]) {
      const speedMps = speedOfRun(whole, NINE_FOOT);
      expect(lengthsRun(speedMps - 1e-9, NINE_FOOT)).toBeCloseTo(whole, 6);
      expect(lengthsRun(speedMps + 1e-9, NINE_FOOT)).toBeCloseTo(whole, 6);
    }
  });

  it('are fewer on a slow cloth, on a long table', () => {
    expect(lengthsRun(2, bedOf({ rollFriction: 0.016 }))).toBeLessThan(lengthsRun(2, NINE_FOOT));
    expect(lengthsRun(2, bedOf({}, 3.569))).toBeLessThan(lengthsRun(2, NINE_FOOT));
  });

  it('are written as people say them', () => {
    const { facts, inMps, inUnit } = speedScale('lengths', NINE_FOOT, TABLE_RUNS);
    expect(formatQuantity(inUnit(inMps(1)), facts)).toBe('1.0 lengths');
    expect(formatQuantity(inUnit(inMps(2.5)), facts)).toBe('2.5 lengths');
  });
});
