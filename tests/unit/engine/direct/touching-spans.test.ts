import { describe, expect, it } from 'vitest';
import { ContactProber } from '../../../../src/engine/direct/contact-probe';
import { layoutOf } from '../../../../src/engine/direct/layout';
import type { Shot } from '../../../../src/engine/direct/shot';
import { touchingSpans } from '../../../../src/engine/direct/touching-spans';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';
import { type Motion, type Phase, placeAt } from '../../../../src/engine/motion/phase';
import { between, type Random, seededRandom } from '../../../harness/seeded-random';
import { anyKit, anyPhase } from '../ball/random-balls';

function proberAt(distanceM: number, ballRadiusM: number): ContactProber {
  const shot: Shot = { distanceM, cutRad: 0.4, side: 0, height: 0, elevationRad: 0, speedMps: 1 };
  const kit = { ...DEFAULT_KIT, ballRadiusM };
  return new ContactProber(layoutOf(shot, ballRadiusM), shot.cutRad, kit);
}

function gapAt(phase: Phase, prober: ContactProber, timeS: number): number {
  placeAt(phase, timeS, prober.place);
  return prober.gapM();
}

function scene(random: Random, motion: Motion, slope: number) {
  const phase = anyPhase(random, motion, anyKit(random, slope));
  // Some distance that the path comes near, so that it is entered, left or skimmed.
  const prober = proberAt(1, phase.radiusM);
  placeAt(phase, phase.durationS * random(), prober.place);
  const away = Math.hypot(prober.place.xM, prober.place.yM);
  const distanceM = Math.max(0.005, away + between(random, -3, 3) * phase.radiusM);
  return { phase, prober: proberAt(distanceM, phase.radiusM) };
}

const LOOKS = 2000;

describe.each([0, 0.008])('touching range on a bed tilted up to %d', (slope) => {
  it.each(['sliding', 'rolling', 'flying'] as const)(
    '%s: no moment of it is left out',
    (motion) => {
      const random = seededRandom(77 + motion.length);
      let [within, leftOut] = [0, 0];
      for (let count = 0; count < 120; count++) {
        const { phase, prober } = scene(random, motion, slope);
        const spans = touchingSpans(phase, prober).map(
          (times) => [times[0], times.at(-1)] as const,
        );
        for (let look = 0; look <= LOOKS; look++) {
          const timeS = (phase.durationS * look) / LOOKS;
          if (gapAt(phase, prober, timeS) > -1e-9) continue;
          within++;
          const held = spans.some(([from = 9e9, to = 0]) => from <= timeS && timeS <= to + 1e-12);
          if (!held) leftOut++;
        }
      }
      expect(leftOut).toBe(0);
      expect(within).toBeGreaterThan(1000);
    },
  );

  it('is sampled in order, close enough, and at its rims', () => {
    const random = seededRandom(78);
    for (let count = 0; count < 300; count++) {
      const motion = (['sliding', 'rolling', 'flying'] as const)[count % 3] ?? 'sliding';
      const { phase, prober } = scene(random, motion, slope);
      for (const times of touchingSpans(phase, prober)) {
        expect(times.length).toBeGreaterThanOrEqual(12);
        expect(times).toEqual([...times].sort((a, b) => a - b));
        const places = times.map((timeS) => {
          placeAt(phase, timeS, prober.place);
          return { ...prober.place, gapM: prober.gapM() };
        });
        expect(Math.max(...places.map(({ gapM }) => gapM))).toBeLessThan(3e-13);
        for (const [index, { xM, yM, zM }] of places.entries()) {
          const before = places[index - 1];
          if (before === undefined) continue;
          const step = Math.hypot(xM - before.xM, yM - before.yM, zM - before.zM);
          expect(step).toBeLessThan(0.4 * phase.radiusM);
        }
      }
    }
  });
});

describe('touchingSpans', () => {
  it('has none where the path never comes near', () => {
    const random = seededRandom(1);
    const phase = anyPhase(random, 'sliding', anyKit(random));
    expect(touchingSpans(phase, proberAt(400, phase.radiusM))).toEqual([]);
  });
});
