import { describe, expect, it } from 'vitest';
import { ContactProber, FLANKS } from '../../../../src/engine/direct/contact-probe';
import { layoutOf } from '../../../../src/engine/direct/layout';
import type { Shot } from '../../../../src/engine/direct/shot';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';
import { bearing, roughBearing, wrapped } from '../../../../src/engine/numerics/angle';
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
    if (prober.gapM() < -1e-6) return { phase, shot, layout, prober, timeS, kit };
  }
}

/** How far right of the target line the line of centres of the last look points, rad. */
function lineMiss({ prober, shot }: ReturnType<typeof anyTouch>): number {
  return wrapped(bearing(prober.nx, prober.ny) + prober.aimRad() - shot.cutRad);
}

describe('ContactProber', () => {
  const random = seededRandom(12);
  const touches = Array.from({ length: 400 }, () => anyTouch(random));

  it('places the object ball where it lies at the aim it tells, touching the cue ball', () => {
    for (const { prober, phase, layout, timeS } of touches) {
      for (const flank of FLANKS) {
        prober.look(phase, timeS, flank);
        const { nx, ny, nz } = prober;
        const seenAt = layout.bearingRad - prober.aimRad();
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
        prober.look(phase, timeS, flank);
        const { xM, yM } = prober.place;
        const seenAt = layout.bearingRad - prober.aimRad();
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

  it('turns the object ball off the line of centres by no more than friction can', () => {
    for (const touch of touches) {
      const { prober, phase, timeS, kit } = touch;
      const { a, b } = kit.ballFriction;
      for (const flank of FLANKS) {
        prober.look(phase, timeS, flank);
        const thrown = Math.abs(prober.objectMiss() - lineMiss(touch));
        const apart = Math.min(thrown, 2 * Math.PI - thrown);
        const share = (a + b) / Math.hypot(prober.nx, prober.ny);
        expect(apart).toBeLessThanOrEqual((share < 1 ? Math.asin(share) : Math.PI) + 1e-12);
      }
    }
  });

  it('leaves it to the line of centres on which side the ball goes only where that is sure', () => {
    let told = 0;
    for (const touch of touches) {
      const { prober, phase, timeS } = touch;
      for (const flank of FLANKS) {
        prober.look(phase, timeS, flank);
        // Right behind, where nothing ever goes, left and right are one.
        const isAhead = Math.abs(lineMiss(touch)) < Math.PI / 2;
        if (!prober.isToldByLine() || !isAhead) continue;
        told++;
        expect(prober.objectMiss() > 0).toBe(prober.lineMiss() > 0);
      }
    }
    expect(told).toBeGreaterThan(100);
  });

  it('misses nothing when the line of centres is the target line and nothing rubs', () => {
    const kit = { ...DEFAULT_KIT, ballFriction: { a: 0, b: 0, c: 0 } };
    for (const { phase, layout, timeS, shot } of touches.slice(0, 100)) {
      const sample = new ContactProber(layout, shot.cutRad, kit);
      sample.look(phase, timeS, 1);
      expect(sample.isToldByLine()).toBe(true);
      expect(sample.roughMiss()).toBeCloseTo(sample.lineMiss(), 9);
      const missRad = sample.objectMiss();
      const rough = roughBearing(Math.sin(missRad), Math.cos(missRad));
      expect(sample.roughMiss()).toBeCloseTo(rough, 12);
    }
  });
});
