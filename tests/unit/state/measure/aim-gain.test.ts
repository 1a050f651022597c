import { describe, expect, it } from 'vitest';
import { solveAim } from '../../../../src/engine/direct/solve-aim';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';
import { KIT_QUANTITIES, type KitSpread, UNMEASURED } from '../../../../src/engine/kit/kit-spread';
import { aimGain } from '../../../../src/state/measure/aim-gain';
import { knownAlongShot } from '../../../../src/state/measure/known-along-shot';
import { DEFAULT_POCKET, DEFAULT_SHOT } from '../../../../src/store/default-desk';

const LEVEL = { alongM_per_M: 0, rightM_per_M: 0 };
const correlation = KIT_QUANTITIES.map((_, i) => KIT_QUANTITIES.map((_, j) => Number(i === j)));
/** A kit with this much of what is usually not known of it. */
function known(massRatio: number, share: number) {
  const entries = KIT_QUANTITIES.map((name) => [name, share * UNMEASURED[name]]);
  const spread = Object.fromEntries(entries) as KitSpread;
  return knownAlongShot({ kit: { ...DEFAULT_KIT, massRatio }, spread, correlation }, LEVEL, null);
}
const SHOT = { ...DEFAULT_SHOT, side: -0.4 };
const ASKED = { shot: SHOT, pocket: DEFAULT_POCKET, lead: 'ghost-ball' } as const;
const gainOf = (...[earlier, now]: readonly (readonly [number, number])[]) => {
  const gain = earlier && now && aimGain(ASKED, known(...earlier), known(...now));
  if (!gain) throw new Error('the shot has no aim');
  return gain;
};

describe('what readings did to an aim', () => {
  it('is how far the line moves beside the ghost ball, right plus', () => {
    const lineM = (massRatio: number) => {
      const answer = solveAim(SHOT, { ...DEFAULT_KIT, massRatio });
      return answer.ok ? SHOT.distanceM * Math.tan(answer.aimRad) : Number.NaN;
    };
    const { shiftM } = gainOf([22, 0.2], [40, 0.2]);
    expect(shiftM).toBeCloseTo(lineM(40) - lineM(22), 12);
    // Left side squirts right, so it is aimed left; with less squirt, less so.
    expect(shiftM).toBeGreaterThan(0.005);
  });

  it('is half as unsure where half as little is known', () => {
    const { beforeSdM, nowSdM } = gainOf([22, 0.2], [22, 0.1]);
    expect(beforeSdM / nowSdM).toBeCloseTo(2, 1);
  });

  it('is good enough twice as far, and for this shot from its own distance on', () => {
    const [rough, fine] = [gainOf([22, 1], [22, 0.2]), gainOf([22, 1], [22, 0.1])];
    expect(fine.enoughM / rough.enoughM).toBeCloseTo(2, 1);
    for (const share of [1.5, 1, 0.3, 0.05]) {
      const { enoughM, isEnough } = gainOf([22, 1], [22, share]);
      expect(isEnough).toBe(enoughM >= SHOT.distanceM);
    }
    expect(gainOf([22, 1], [22, 0.05]).isEnough).toBe(true);
  });

  it('is nothing where the shot has no aim', () => {
    const beyond = { ...ASKED, shot: { ...SHOT, speedMps: 0.05, distanceM: 3 } };
    expect(aimGain(beyond, known(22, 1), known(22, 0.5))).toBeNull();
  });
});
