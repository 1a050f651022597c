import { describe, expect, it } from 'vitest';
import { ContactProber } from '../../../../src/engine/direct/contact-probe';
import { FLANKS } from '../../../../src/engine/direct/contact-roots';
import { layoutOf } from '../../../../src/engine/direct/layout';
import type { Shot } from '../../../../src/engine/direct/shot';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';
import { between, type Random, seededRandom } from '../../../harness/seeded-random';
import { anyKit, anyPhase } from '../ball/random-balls';

const MOTIONS = ['sliding', 'rolling', 'flying'] as const;

/** A prober and a moment of a phase at which the path is within touching range of the object ball. */
function anyTouch(random: Random) {
  for (;;) {
    const kit = anyKit(random);
    const motion = MOTIONS[Math.floor(random() * 3)] ?? 'sliding';
    const phase = anyPhase(random, motion, kit);
    const shot: Shot = {
      distanceM: between(random, 0.05, 1),
      cutRad: between(random, -1.5, 1.5),
      side: 0,
      height: 0,
      elevationRad: 0,
      speedMps: 1,
    };
    const layout = layoutOf(shot, kit.ballRadiusM);
    const prober = new ContactProber(layout, shot.cutRad, kit);
    const timeS = phase.durationS * random();
    prober.look(phase, timeS, 1);
    if (prober.gapM() < -1e-6) return { phase, shot, layout, prober, timeS };
  }
}

describe('ContactProber', () => {
  const random = seededRandom(12);
  const touches = Array.from({ length: 400 }, () => anyTouch(random));

  it('places the object ball where it lies at the aim it tells, touching the cue ball', () => {
    for (const { prober, phase, layout, timeS } of touches) {
      for (const flank of FLANKS) {
        const { aimRad, nx, ny, nz } = prober.look(phase, timeS, flank);
        const seenAt = layout.bearingRad - aimRad;
        const { xM, yM, zM } = prober.place;
        const apart = [
          layout.separationM * Math.sin(seenAt) - xM,
          layout.separationM * Math.cos(seenAt) - yM,
          -zM,
        ];
        expect(Math.hypot(...apart)).toBeCloseTo(layout.reachM, 11);
        expect(Math.hypot(nx, ny, nz)).toBeCloseTo(1, 12);
        expect((apart[0] ?? 9) / layout.reachM).toBeCloseTo(nx, 9);
        expect((apart[1] ?? 9) / layout.reachM).toBeCloseTo(ny, 9);
      }
    }
  });

  it('has the object ball on either side of the cue ball’s way, as the flank says', () => {
    for (const { prober, phase, layout, timeS } of touches) {
      const [left, right] = FLANKS.map((flank) => {
        const { aimRad } = prober.look(phase, timeS, flank);
        const { xM, yM } = prober.place;
        const seenAt = layout.bearingRad - aimRad;
        return Math.sin(seenAt - Math.atan2(xM, yM));
      });
      expect(left).toBeLessThanOrEqual(1e-12);
      expect(right).toBeGreaterThanOrEqual(-1e-12);
    }
  });

  it('measures the gap to the nearest place the object ball could lie', () => {
    const around = Array.from({ length: 2000 }, (_, step) => (step * Math.PI) / 1000);
    for (const { prober, phase, layout, timeS } of touches.slice(0, 60)) {
      prober.look(phase, timeS, 1);
      const { xM, yM, zM } = prober.place;
      const gaps = around.map(
        (angle) =>
          Math.hypot(
            layout.separationM * Math.sin(angle) - xM,
            layout.separationM * Math.cos(angle) - yM,
            zM,
          ) - layout.reachM,
      );
      expect(Math.abs(Math.min(...gaps) - prober.gapM())).toBeLessThan(1e-4);
    }
  });

  it('turns the object ball off the line of centres by no more than it says friction can', () => {
    for (const { prober, phase, timeS } of touches) {
      for (const flank of FLANKS) {
        prober.look(phase, timeS, flank);
        const thrown = Math.abs(prober.objectMiss(phase, timeS) - prober.lineMiss());
        const apart = Math.min(thrown, 2 * Math.PI - thrown);
        expect(apart).toBeLessThanOrEqual(prober.mostThrow() + 1e-12);
      }
    }
  });

  it('misses nothing when the line of centres is the target line and nothing rubs', () => {
    const kit = { ...DEFAULT_KIT, ballFriction: { a: 0, b: 0, c: 0 } };
    for (const { phase, layout, timeS, shot } of touches.slice(0, 100)) {
      const sample = new ContactProber(layout, shot.cutRad, kit);
      sample.look(phase, timeS, 1);
      expect(sample.objectMiss(phase, timeS)).toBeCloseTo(sample.lineMiss(), 9);
      expect(sample.mostThrow()).toBe(0);
    }
  });
});
